use proptest::prelude::*;

use super::*;

/// What one phone does: `(job, what, wall clock)`.
fn steps() -> impl Strategy<Value = Vec<(u8, u8, i64)>> {
    proptest::collection::vec((0u8..3, 0u8..5, 0i64..2_000), 0..12)
}

fn phone(device: u8, steps: &[(u8, u8, i64)]) -> (TempDir, Store) {
    let dir = tempfile::tempdir().unwrap();
    let mut store = Store::open_as(dir.path(), DeviceId([device; 16])).unwrap();
    go_on(&mut store, steps);
    (dir, store)
}

fn go_on(store: &mut Store, steps: &[(u8, u8, i64)]) {
    for (job, what, ms) in steps {
        let job = JobId([*job; 16]);
        let stamp = at(*ms);
        let last = store.entries(job).unwrap().last().map(|entry| entry.key);
        match (what, last) {
            (0, Some(target)) => store.undo(job, target, stamp),
            (1, Some(target)) => store.correct(job, target, &note("put right"), stamp),
            (2, _) => store.append(job, &plate(&format!("P {ms}")), stamp),
            (3, _) => store.bin(job, stamp),
            _ => store.append(job, &note(&format!("n{ms}")), stamp),
        }
        .unwrap();
    }
}

fn states(store: &Store) -> Vec<crate::fold::JobState> {
    (0..3).map(|job| store.fold(JobId([job; 16])).unwrap()).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn merging_both_ways_gives_both_phones_the_union_and_the_same_state(
        mine in steps(), theirs in steps(), later in steps()
    ) {
        let (_one, mut a) = phone(1, &mine);
        let (_two, mut b) = phone(2, &theirs);
        let (before_a, before_b) = (a.all_entries().unwrap(), b.all_entries().unwrap());
        let merged = a.merge(&before_b).unwrap();
        prop_assert_eq!((merged.added, merged.known), (before_b.len(), 0));
        b.merge(&before_a).unwrap();
        let mut union: Vec<Entry> = before_a.into_iter().chain(before_b).collect();
        union.sort_by_key(|entry| entry.key);
        prop_assert_eq!(&a.all_entries().unwrap(), &union);
        prop_assert_eq!(&b.all_entries().unwrap(), &union);

        // Both go on, and meet again.
        go_on(&mut a, &later);
        go_on(&mut b, &later);
        let (all_a, all_b) = (a.all_entries().unwrap(), b.all_entries().unwrap());
        a.merge(&all_b).unwrap();
        b.merge(&all_a).unwrap();
        prop_assert_eq!(states(&a), states(&b));
        prop_assert_eq!(derived_rows(&a), derived_rows(&b));
        prop_assert_eq!(derived_rows(&a), rebuilt_rows(&a));
    }
}

#[test]
fn merging_again_changes_nothing() {
    let (_one, a) = phone(1, &[(0, 2, 5), (0, 4, 6)]);
    let (_two, mut b) = phone(2, &[(0, 4, 9)]);
    let theirs = a.all_entries().unwrap();
    assert_eq!(b.merge(&theirs).unwrap().added, 2);
    let before = b.all_entries().unwrap();
    let again = b.merge(&theirs).unwrap();
    assert_eq!((again.added, again.known), (0, 2));
    assert_eq!(b.all_entries().unwrap(), before);
}

#[test]
fn what_is_written_after_a_merge_comes_after_what_was_merged() {
    let (_one, a) = phone(1, &[(0, 4, 9_000_000)]);
    let (_two, mut b) = phone(2, &[(0, 4, 1_000)]);
    b.merge(&a.all_entries().unwrap()).unwrap();
    let written = b.append(JobId([0; 16]), &note("after"), at(2_000)).unwrap();
    assert_eq!(b.entries(JobId([0; 16])).unwrap().last(), Some(&written));
}

#[test]
fn a_clash_under_one_key_is_reported_and_the_own_entry_stays() {
    let (_one, a) = phone(1, &[(0, 4, 1)]);
    let (_two, mut copy) = phone(1, &[(0, 4, 2)]);
    let before = copy.all_entries().unwrap();
    let merged = copy.merge(&a.all_entries().unwrap()).unwrap();
    assert_eq!((merged.added, merged.clashing.len()), (0, 1));
    assert_eq!(copy.all_entries().unwrap(), before);
}

#[test]
fn clocks_past_the_year_9999_and_counters_out_of_range_are_refused() {
    let (_one, a) = phone(1, &[(0, 4, 1)]);
    let (_two, mut b) = phone(2, &[]);
    let good = a.all_entries().unwrap().remove(0);
    let bad = [
        Entry {
            hlc: i64::MAX,
            ..good.clone()
        },
        Entry {
            hlc: -1,
            ..good.clone()
        },
        Entry {
            key: EntryKey {
                counter: u64::MAX,
                ..good.key
            },
            ..good.clone()
        },
        Entry {
            key: EntryKey {
                counter: 0,
                ..good.key
            },
            ..good.clone()
        },
    ];
    let merged = b.merge(&bad).unwrap();
    assert_eq!((merged.added, merged.refused.len()), (0, 4));
    assert!(b.append(JobId([0; 16]), &note("still works"), at(5)).is_ok());
}

#[test]
fn own_entries_that_come_back_from_elsewhere_keep_the_counter_from_being_given_twice() {
    let (_one, a) = phone(1, &[(0, 4, 1), (0, 4, 2)]);
    let (_two, mut fresh) = phone(1, &[]);
    fresh.merge(&a.all_entries().unwrap()).unwrap();
    assert_eq!(
        fresh
            .append(JobId([0; 16]), &note("third"), at(3))
            .unwrap()
            .key
            .counter,
        3
    );
}
