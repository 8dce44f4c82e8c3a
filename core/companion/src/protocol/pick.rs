//! What can be typed into and picked from.

/// A field that can be typed into.
#[derive(Debug, Clone, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum FieldId {
    /// Search in the list of jobs.
    Search,
    /// The first day on which listed jobs were worked on last.
    WorkedFrom,
    /// The last day on which listed jobs were worked on last.
    WorkedUntil,
    /// What the vehicle is called.
    Label,
    /// Number plate.
    Plate,
    /// Vehicle identification number.
    Vin,
    /// Odometer, with or without its unit.
    Odometer,
    /// Odometer when the vehicle is given back.
    OdometerOut,
    /// When and to whom the vehicle is given back.
    HandedOver,
    /// The customer's name.
    Customer,
    /// The complaint in the person's words.
    ComplaintNote,
    /// Altitude, in the person's unit.
    Altitude,
    /// Ambient pressure, kPa.
    Ambient,
    /// Air temperature, in the person's unit.
    AirTemperature,
    /// Minutes since the engine stopped.
    EngineStopped,
    /// A chamber's or reservoir's volume, cm³.
    ChamberVolume {
        /// Which component.
        component: String,
    },
    /// A hose's length, in the person's unit.
    HoseLength {
        /// Which component.
        component: String,
    },
    /// How well the chambers' volumes are known, percent.
    ChamberDoubt,
    /// Bore of the hoses, in the person's unit.
    HoseBore,
    /// Lower end of the coil's band, Ω.
    CoilLow,
    /// Upper end of the coil's band, Ω.
    CoilHigh,
    /// The fuse's rating, A.
    FuseRating,
    /// The gauge's end of scale, in its unit.
    GaugeSpan,
    /// The gauge's division, in its unit.
    GaugeDivision,
    /// How finely the gauge is read, in its unit.
    GaugeReadTo,
    /// Volume of hand pump, gauge and adapter, cm³.
    PumpVolume,
    /// Volume of one stroke, cm³.
    PumpStroke,
    /// The meter's percent of reading.
    MeterPercent,
    /// The meter's counts.
    MeterCounts,
    /// The meter's decimals on the range in use.
    MeterDigits,
    /// The gauge's serial number and calibration.
    GaugeIdentity,
    /// The meter's serial number and calibration.
    MeterIdentity,
    /// The drop that is allowed, in the gauge's unit.
    LimitDrop,
    /// The time over which it is allowed, s.
    LimitSeconds,
    /// A line of what is said during a hold.
    Script {
        /// The moment it is for, such as `read-now`.
        cue: String,
    },
    /// The certainty at which a finding counts, percent.
    Confidence,
    /// The gauge reading of a hold.
    GaugeReading,
    /// Pump strokes.
    Strokes,
    /// A value of the test shown, by its key in the catalogue.
    Answer {
        /// The key.
        key: String,
    },
    /// Why a test can't be done, in the person's words.
    CannotWhy,
    /// A photo's caption.
    Caption,
    /// The words beside the mark in hand.
    MarkText,
    /// A note to the test or the repair.
    Note,
    /// What was put in.
    RepairPart,
    /// The torque of a repair, with its source.
    Torque,
    /// What was agreed with the customer.
    Agreed,
    /// The workshop, for the report.
    Business,
    /// The technician, for the report.
    Technician,
    /// The currency's code.
    Currency,
    /// Tax on parts, percent.
    TaxParts,
    /// Tax on labour, percent.
    TaxLabour,
    /// How long an estimate is good, days.
    ValidDays,
    /// What a line of the costs is for.
    CostWords {
        /// Which line, counted from the top.
        line: u32,
    },
    /// How much of it.
    CostQuantity {
        /// Which line, counted from the top.
        line: u32,
    },
    /// The price of one, without tax.
    CostPrice {
        /// Which line, counted from the top.
        line: u32,
    },
    /// Who signs.
    Signer,
    /// The work that is decided on.
    DecidedWork,
}

/// An option that can be tapped.
#[derive(Debug, Clone, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
pub enum Pick {
    /// A complaint, by its id.
    Complaint {
        /// Such as `shake_idle`.
        id: String,
    },
    /// A circuit template, by its id.
    Template {
        /// Such as `two-mounts-one-valve`.
        id: String,
    },
    /// An electric layout, by its id.
    Layout {
        /// Its id in the circuits' data.
        id: String,
    },
    /// A property of the circuit.
    Property {
        /// Such as `vacuum_means`.
        property: String,
        /// Such as `soft`.
        value: String,
    },
    /// Add a mount to the circuit.
    AddMount,
    /// Take a component out of the circuit.
    RemoveComponent {
        /// Which.
        component: String,
    },
    /// Owner or mechanic.
    Profile {
        /// `owner` or `mechanic`.
        id: String,
    },
    /// A tool that is at hand, by its id.
    Tool {
        /// Such as `hand-pump`.
        id: String,
    },
    /// A second person is there.
    SecondPerson,
    /// The engine can run.
    EngineRuns,
    /// The vacuum unit of the gauge.
    GaugeUnit {
        /// Its symbol.
        symbol: String,
    },
    /// The gauge's accuracy grade.
    GaugeGrade {
        /// Such as `B`.
        grade: String,
    },
    /// The unit vacuum is shown in.
    ShownUnit {
        /// Its symbol.
        symbol: String,
    },
    /// The units of all instruments but the gauge at once.
    UnitSet {
        /// `metric`, `us` or `uk`.
        id: String,
    },
    /// The unit of one instrument.
    UnitOf {
        /// `odometer`, `thermometer`, `tape` or `rule`.
        instrument: String,
        /// Its symbol.
        symbol: String,
    },
    /// A word or number out of the test's options (a 0–3 scale, `open`).
    Answer {
        /// The value's key in the catalogue.
        key: String,
        /// The option.
        value: String,
    },
    /// The state the car was in while measuring.
    CarState {
        /// `connected`, `engine`, `hot`.
        property: String,
        /// `yes`, `no`, `off`, `idle`, `in_gear`.
        value: String,
    },
    /// The component that was repaired.
    Part {
        /// Which.
        component: String,
    },
    /// The mark that a touch sets.
    MarkTool {
        /// Its id.
        id: String,
    },
    /// The language of the screens.
    Language {
        /// Its tag, such as `de`; empty for the phone's.
        tag: String,
    },
    /// How a mark looks: its colour, or what goes to the test point.
    MarkStyle {
        /// Its id.
        id: String,
    },
    /// The part that a photo shows.
    PhotoShows {
        /// Which.
        component: String,
    },
    /// A shelf of the list of jobs.
    Shelf {
        /// `all`, `open`, `closed` or `bin`.
        id: String,
    },
    /// Since when jobs were worked on.
    WorkedOn {
        /// `any`, `week`, `month` or `year`.
        id: String,
    },
    /// A job of the list, to be exported with others.
    Job {
        /// Which.
        job: String,
    },
    /// The report's paper.
    Paper {
        /// `a4` or `letter`.
        id: String,
    },
    /// The language of the job's reports.
    ReportLanguage {
        /// Its tag, such as `de`; empty for that of the screens.
        tag: String,
    },
    /// A part of the job's report, put in or left out.
    ReportPart {
        /// `drawings`, `photos` or `record`.
        id: String,
    },
    /// Whether the costs are foreseen or charged.
    CostStage {
        /// `estimate` or `charged`.
        id: String,
    },
    /// What the customer says.
    Decision {
        /// `agreed`, `put_off`, `refused` or `handed_over`.
        id: String,
    },
    /// Speech on or off.
    Speech,
    /// Buzzing on or off.
    Buzzing,
    /// Figures to be read at two metres, or of the usual size.
    LargeFigures,
    /// Say during a hold what the texts say, in place of the person's own lines.
    PlainScript,
    /// Forget what the person's own jobs taught so far.
    ForgetJobs,
}
