//! The long run of the evaluation, with the table of all figures.
//!
//! `cargo bench -p holdfast-tests --bench reasoning -- [--failures] [--jobs N] [--oracle N] [--from SEED] [--no-textbook] [--show KIND SEED]`
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::unreachable,
    dead_code,
    reason = "a bench that cannot run ends loudly; the short run uses the rest of the modules"
)]

use jobs::Stratum;

#[path = "../bench/peer.rs"]
mod peer;
mod peers;

include!("modules.rs");

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let has = |name: &str| args.iter().any(|a| a == name);
    let number = |name: &str, otherwise: u64| {
        let at = args.iter().position(|a| a == name);
        at.and_then(|n| args.get(n + 1)?.parse().ok())
            .unwrap_or(otherwise)
    };
    if let Some(at) = args.iter().position(|a| a == "--show") {
        let kinds = [
            Stratum::Natural,
            Stratum::OneSlip,
            Stratum::Double,
            Stratum::Sound,
            Stratum::Tester,
        ];
        let kind = args
            .get(at + 1)
            .and_then(|name| kinds.into_iter().find(|k| format!("{k:?}") == *name))
            .expect("--show takes a kind of job, such as Natural, and a seed");
        let seed = args.get(at + 2).and_then(|s| s.parse().ok()).expect("and a seed");
        show::print(kind, seed);
        return;
    }
    for (template, promised) in [("two-mounts-one-valve", 10.0), ("four-mounts", 50.0)] {
        let speed = speed::of(template);
        println!(
            "{template}, median and slowest step: finding {:.1} and {:.1} ms; next test after it {:.1} and {:.1}, with the causes \
             ranked for it {:.1} and {:.1} (promised: under {promised} ms)",
            speed.finding.median,
            speed.finding.slowest,
            speed.next.median,
            speed.next.slowest,
            speed.next_alone.median,
            speed.next_alone.slowest,
        );
    }
    println!("beside others:");
    peers::print();
    let jobs = number("--jobs", 5_000);
    // Six in ten as cars come; the rest kinds that are too rare among them to count.
    let records = batch::done(batch::Plan {
        natural: jobs * 60 / 100,
        double: jobs * 14 / 100,
        one_slip: jobs * 10 / 100,
        sound: jobs * 8 / 100,
        tester: jobs * 8 / 100,
        oracle: number("--oracle", 1_000),
        from: number("--from", 1),
        textbook: !has("--no-textbook"),
    });
    table::print(&records);
    if has("--failures") {
        failures::print(&records);
    }
}
