//! The figures of many jobs, against what is promised.

use crate::batch::Record;
use crate::figures::{Saving, Share, bins, calibration_error};
use crate::jobs::Stratum;

/// All figures.
pub struct Figures {
    pub single_right: Share,
    pub single_exact: Share,
    pub double_right: Share,
    pub ended: Share,
    pub calibration: f64,
    pub calibration_parts: f64,
    pub slip_right: Share,
    pub slip_decided_right: Share,
    pub sound_blamed: Share,
    pub tester_blames: Share,
    pub meter_blames: Share,
    /// Of the jobs in which a bad tester was put right.
    pub mended_blames: Share,
    pub oracle_parts: Share,
    pub core_parts: Share,
    pub oracle_exact: Share,
    pub core_exact: Share,
    pub fixed: Option<Saving>,
    pub skipping: Option<Saving>,
    pub refused: usize,
}

/// Jobs with exactly one fault, and that in the circuit, by their natural rates.
fn is_single(r: &Record) -> bool {
    r.stratum == Stratum::Natural && r.truth.len() == 1 && in_circuit(r)
}

fn in_circuit(r: &Record) -> bool {
    r.truth.iter().any(|f| {
        ![
            "engine",
            "strut",
            "exhaust",
            "solid_mount",
            "drivetrain",
            "other",
            "hand_pump",
            "multimeter",
        ]
        .contains(&f.component.as_str())
    })
}

fn is_sound(r: &Record) -> bool {
    let natural = r.stratum == Stratum::Natural && !in_circuit(r) && !has_bad_tester(r);
    // With its tester put right, a car of that kind is a sound one like others.
    natural || r.stratum == Stratum::Sound || (r.stratum == Stratum::Tester && r.mended)
}

/// The tester was bad to the end.
fn has_bad_tester(r: &Record) -> bool {
    let truth = || r.truth.iter();
    !r.mended && truth()
        .any(|f| ["hand_pump", "multimeter"].contains(&f.component.as_str()))
}

impl Figures {
    pub fn of(records: &[Record]) -> Self {
        let all = || records.iter();
        let singles = || all().filter(|r| is_single(r));
        let slips = || all().filter(|r| r.stratum == Stratum::OneSlip && r.slipped == 1);
        let natural = || all().filter(|r| r.stratum == Stratum::Natural);
        let testers = |what: &'static str| {
            all().filter(move |r| r.truth.iter().any(|f| f.component.as_str() == what) && r.truth.len() == 1)
        };
        let asked = || {
            all()
                .filter(|r| r.truth.len() < 2)
                .filter_map(|r| Some((r, r.oracle.as_ref()?)))
        };
        let pairs = |pick: fn(&Record) -> Option<f64>| -> Option<Saving> {
            let pairs: Vec<_> = natural()
                .filter_map(|r| Some((r.guided_minutes, pick(r)?)))
                .collect();
            (!pairs.is_empty()).then(|| Saving::of(&pairs))
        };
        let said: Vec<_> = natural().map(|r| (r.guided.p, r.guided.cause_right)).collect();
        let said_parts: Vec<_> = natural()
            .map(|r| (r.guided.p_parts, r.guided.p_parts_right))
            .collect();
        Self {
            single_right: Share::of(
                singles()
                    .filter(|r| r.guided.decided)
                    .map(|r| r.guided.parts_right),
            ),
            single_exact: Share::of(
                singles()
                    .filter(|r| r.guided.decided)
                    .map(|r| r.guided.cause_right),
            ),
            double_right: Share::of(
                all()
                    .filter(|r| r.stratum == Stratum::Double && r.guided.decided)
                    .map(|r| r.guided.both_named_or_open),
            ),
            ended: Share::of(
                natural()
                    .filter(|r| !has_bad_tester(r))
                    .map(|r| r.guided.decided || r.guided.rightly_inseparable),
            ),
            calibration: calibration_error(&said),
            calibration_parts: calibration_error(&said_parts),
            slip_right: Share::of(slips().map(|r| r.guided.p_parts_right)),
            slip_decided_right: Share::of(slips().filter(|r| r.guided.decided).map(|r| r.guided.parts_right)),
            sound_blamed: Share::of(all().filter(|r| is_sound(r)).map(|r| r.guided.blames)),
            tester_blames: Share::of(testers("hand_pump").map(|r| r.guided.blames && !r.mended)),
            meter_blames: Share::of(testers("multimeter").map(|r| r.guided.blames && !r.mended)),
            mended_blames: Share::of(
                all()
                    .filter(|r| r.mended && !in_circuit(r))
                    .map(|r| r.guided.blames),
            ),
            oracle_parts: Share::of(asked().map(|(_, o)| o.parts_right)),
            core_parts: Share::of(asked().map(|(r, _)| r.guided.p_parts_right)),
            oracle_exact: Share::of(asked().map(|(_, o)| o.cause_right)),
            core_exact: Share::of(asked().map(|(r, _)| r.guided.cause_right)),
            fixed: pairs(|r| r.fixed.as_ref().map(|(_, m)| *m)),
            skipping: pairs(|r| r.skipping.as_ref().map(|(_, m)| *m)),
            refused: all().filter(|r| r.refused.is_some()).count(),
        }
    }
}

/// Prints the table.
pub fn print(records: &[Record]) {
    let f = Figures::of(records);
    let row = |name: &str, wanted: &str, value: String| println!("  {name:<62} {wanted:>8}   {value}");
    println!(
        "reasoning, {} simulated jobs; in brackets the 95 % interval",
        records.len()
    );
    row(
        "one fault, decided: the faulty part named",
        "≥ 97 %",
        f.single_right.to_string(),
    );
    row("one fault, decided: and its mode", "", f.single_exact.to_string());
    row(
        "two faults, decided: both named, or one named and one left open",
        "≥ 90 %",
        f.double_right.to_string(),
    );
    row(
        "decided, or rightly declared inseparable",
        "≥ 97 %",
        f.ended.to_string(),
    );
    row(
        "calibration error of the first cause's probability",
        "≤ 0.030",
        format!("{:.3}", f.calibration),
    );
    row(
        "calibration error of the first part's probability",
        "",
        format!("{:.3}", f.calibration_parts),
    );
    row(
        "one slip in the job: first part right",
        "≥ 90 %",
        f.slip_right.to_string(),
    );
    row(
        "one slip in the job, decided: right",
        "",
        f.slip_decided_right.to_string(),
    );
    row("sound circuit blamed", "≤ 1 %", f.sound_blamed.to_string());
    row(
        "leaking hand pump ends as a faulty car",
        "0",
        f.tester_blames.to_string(),
    );
    row("dead meter ends as a faulty car", "0", f.meter_blames.to_string());
    row(
        "a bad tester put right, and then the sound car blamed",
        "",
        f.mended_blames.to_string(),
    );
    row("first part right, core", "", f.core_parts.to_string());
    row(
        "first part right, oracle on the same readings",
        "+ 2 %",
        f.oracle_parts.to_string(),
    );
    row("first cause right, core", "", f.core_exact.to_string());
    row(
        "first cause right, oracle on the same readings",
        "+ 2 %",
        f.oracle_exact.to_string(),
    );
    if let (Some(fixed), Some(skipping)) = (f.fixed, f.skipping) {
        row(
            "minutes saved against the textbook's order",
            "≥ 50 %",
            fixed.to_string(),
        );
        row(
            "minutes saved against it without idle tests",
            "≥ 25 %",
            skipping.to_string(),
        );
        by_way(records);
    }
    row("readings refused by the core", "0", f.refused.to_string());
    by_kind(records);
    calibration(records);
    minutes_said(records);
    times(records);
}

fn by_way(records: &[Record]) {
    let natural = || records.iter().filter(|r| r.stratum == Stratum::Natural);
    let decided = |pick: &dyn Fn(&Record) -> Option<bool>| Share::of(natural().filter_map(pick));
    println!("  decided: guided {}", decided(&|r| Some(r.guided.decided)));
    println!(
        "           textbook {}",
        decided(&|r| r.fixed.as_ref().map(|(v, _)| v.decided))
    );
    println!(
        "           without idle tests {}",
        decided(&|r| r.skipping.as_ref().map(|(v, _)| v.decided))
    );
    let both: Vec<_> = natural()
        .filter_map(|r| {
            let (v, m) = r.skipping.as_ref()?;
            (v.decided && r.guided.decided).then_some((r.guided_minutes, *m))
        })
        .collect();
    println!(
        "  where both decide, against the one without idle tests: {}",
        Saving::of(&both)
    );
}

fn by_kind(records: &[Record]) {
    println!("  by kind of job: decided · of those right · minutes");
    let kinds = [
        Stratum::Natural,
        Stratum::OneSlip,
        Stratum::Double,
        Stratum::Sound,
        Stratum::Tester,
    ];
    let mut groups: Vec<(String, Vec<&Record>)> = kinds
        .into_iter()
        .map(|k| {
            (
                format!("{k:?}"),
                records.iter().filter(|r| r.stratum == k).collect(),
            )
        })
        .collect();
    let natural = || records.iter().filter(|r| r.stratum == Stratum::Natural);
    groups.push((
        "  nothing wrong".into(),
        natural().filter(|r| r.truth.is_empty()).collect(),
    ));
    groups.push((
        "  outside".into(),
        natural()
            .filter(|r| !r.truth.is_empty() && !in_circuit(r) && !has_bad_tester(r))
            .collect(),
    ));
    groups.push(("  one fault".into(), natural().filter(|r| is_single(r)).collect()));
    let ended = |decided: bool| natural().filter(move |r| r.guided.decided == decided);
    groups.push(("  decided".into(), ended(true).collect()));
    groups.push(("  undecided".into(), ended(false).collect()));
    groups.push(("  hindered".into(), natural().filter(|r| r.hindered).collect()));
    groups.push((
        "  engine can't run".into(),
        natural().filter(|r| !r.can_run).collect(),
    ));
    let mut templates: Vec<&String> = records.iter().map(|r| &r.template).collect();
    templates.sort();
    templates.dedup();
    for t in templates {
        groups.push((format!("  {t}"), natural().filter(|r| &r.template == t).collect()));
    }
    for (name, of) in groups.iter().filter(|(_, of)| !of.is_empty()) {
        let decided = Share::of(of.iter().map(|r| r.guided.decided));
        let right = Share::of(
            of.iter()
                .filter(|r| r.guided.decided)
                .map(|r| r.guided.parts_right),
        );
        let minutes = of.iter().map(|r| r.guided_minutes).sum::<f64>() / of.len() as f64;
        println!(
            "    {name:<28} {decided} · {:.1} % · {minutes:.1} min",
            100.0 * right.value()
        );
    }
}

fn calibration(records: &[Record]) {
    let natural = || records.iter().filter(|r| r.stratum == Stratum::Natural);
    let said: Vec<_> = natural().map(|r| (r.guided.p, r.guided.cause_right)).collect();
    println!("  first cause: said → happened");
    for bin in bins(&said) {
        println!("    {:.2} → {:.2}  ({} jobs)", bin.said, bin.happened, bin.count);
    }
}

/// How the minutes to the end that are said before each test agree with those it takes.
fn minutes_said(records: &[Record]) {
    const STEP: f64 = 10.0;
    const STEPS: usize = 7;
    let mut of_step = vec![(0.0, 0.0, 0usize); STEPS];
    let natural = records.iter().filter(|r| r.stratum == Stratum::Natural);
    for (said, happened) in natural.flat_map(|r| &r.said) {
        let step = &mut of_step[((said / STEP) as usize).min(STEPS - 1)];
        *step = (step.0 + said, step.1 + happened, step.2 + 1);
    }
    println!("  minutes to the end, in the mean: said → happened");
    for (said, happened, tests) in of_step.into_iter().filter(|step| step.2 > 0) {
        let n = tests as f64;
        println!("    {:.1} → {:.1}  ({tests} tests)", said / n, happened / n);
    }
}

fn times(records: &[Record]) {
    for mounts in [1, 2, 4] {
        let mut ms: Vec<f64> = records
            .iter()
            .filter(|r| r.mounts == mounts)
            .flat_map(|r| r.thinking.iter().map(|t| t.as_secs_f64() * 1e3))
            .collect();
        ms.sort_by(f64::total_cmp);
        let at = |share: f64| {
            ms.get(((ms.len() as f64 * share) as usize).min(ms.len().saturating_sub(1)))
                .copied()
        };
        if let (Some(half), Some(most)) = (at(0.5), at(0.99)) {
            println!(
                "  finding and next test, {mounts} mounts: median {half:.1} ms, 99 % within {most:.1} ms (all processors busy)"
            );
        }
    }
}
