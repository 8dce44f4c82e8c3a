"""The posterior of one network after many sets of outcomes, by pgmpy's variable elimination.

The first line that comes in is the network: {"causes": [[name, p], ...], "tests": [{"chances": [[...], ...]}, ...]}, with
the chances by outcome and cause. Each further line is one set of outcomes, [[test, outcome], ...]; for each goes out
{"posterior": [...], "seconds": ...}, the building of the network not counted.
"""

import json
import logging
import sys
import time
import warnings

warnings.simplefilter("ignore")
logging.disable(logging.CRITICAL)

from pgmpy.factors.discrete import TabularCPD
from pgmpy.inference import VariableElimination
from pgmpy.models import DiscreteBayesianNetwork


def network(said):
    causes, tests = said["causes"], said["tests"]
    model = DiscreteBayesianNetwork([("cause", str(n)) for n in range(len(tests))])
    model.add_cpds(TabularCPD("cause", len(causes), [[p] for _, p in causes]))
    for number, test in enumerate(tests):
        rows = test["chances"]
        model.add_cpds(TabularCPD(str(number), len(rows), rows, evidence=["cause"], evidence_card=[len(causes)]))
    model.check_model()
    return VariableElimination(model)


engine = network(json.loads(sys.stdin.readline()))
for line in sys.stdin:
    evidence = {str(test): outcome for test, outcome in json.loads(line)}
    start = time.perf_counter()
    found = engine.query(["cause"], evidence=evidence, show_progress=False)
    seconds = time.perf_counter() - start
    print(json.dumps({"posterior": [float(p) for p in found.values], "seconds": seconds}), flush=True)
