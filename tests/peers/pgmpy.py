"""The posterior of one network after many sets of findings, by pgmpy's variable elimination.

Standard input: {"network": {"causes": [{"name", "p"}], "tests": [{"id", "outcomes", "p": [[cause][outcome]]}]},
"seen": [[[test, outcome], ...], ...]}. Standard output: {"posteriors": [[...], ...], "seconds": [...]}: one posterior
over the causes for each set, and how long each query took, the building of the network not counted.
"""

import json
import logging
import sys
import time

logging.disable(logging.CRITICAL)

from pgmpy.factors.discrete import TabularCPD
from pgmpy.inference import VariableElimination
from pgmpy.models import DiscreteBayesianNetwork


def main():
    asked = json.load(sys.stdin)
    causes, tests = asked["network"]["causes"], asked["network"]["tests"]
    names = [f"t{number}" for number in range(len(tests))]
    model = DiscreteBayesianNetwork([("cause", name) for name in names])
    total = sum(cause["p"] for cause in causes)
    model.add_cpds(TabularCPD("cause", len(causes), [[cause["p"] / total] for cause in causes]))
    for name, test in zip(names, tests):
        outcomes = len(test["outcomes"])
        table = [[test["p"][cause][outcome] for cause in range(len(causes))] for outcome in range(outcomes)]
        model.add_cpds(TabularCPD(name, outcomes, table, evidence=["cause"], evidence_card=[len(causes)]))
    model.check_model()
    engine = VariableElimination(model)
    posteriors, seconds = [], []
    for seen in asked["seen"]:
        evidence = {names[test]: outcome for test, outcome in seen}
        start = time.perf_counter()
        found = engine.query(["cause"], evidence=evidence, show_progress=False)
        seconds.append(time.perf_counter() - start)
        posteriors.append([float(p) for p in found.values])
    json.dump({"posteriors": posteriors, "seconds": seconds}, sys.stdout)


main()
