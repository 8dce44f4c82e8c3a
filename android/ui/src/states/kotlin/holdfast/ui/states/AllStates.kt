package holdfast.ui.states

/** Every screen in every state worth seeing. */
val allStates: List<State> = listOf(
    jobStates,
    formStates,
    overviewStates,
    testStates,
    holdStates,
    meterStates,
    askStates,
    photoStates,
    findingStates,
    reportStates,
    customerStates,
).flatten()
