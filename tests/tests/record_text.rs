//! Records of motion as texts: the usual forms are read, odd ones are faults with their lines, and nothing panics.

use steadfoot::input::Problem;
use steadfoot::motion::{Record, RecordForm, RecordUnit, read_record, read_records};
use steadfoot_tests::random::Random;

fn g(text: &str) -> Result<Record, Vec<(u32, Problem)>> {
    let form = RecordForm { unit: RecordUnit::G, step_s: None };
    read_record(text, &form).map_err(|faults| faults.iter().map(|fault| (fault.line, fault.problem)).collect())
}

#[test]
fn records_are_read_in_their_usual_forms() {
    let expected = Record { step_s: 0.02, accelerations: vec![0.0, 0.1, -0.2, 0.05] };
    let forms = [
        "time,acc (g)\n0,0\n0.02,0.1\n0.04,-0.2\n0.06,0.05\n",
        "0 0\n.02 1e-1\n.04 -2.0E-01\n.06 +.05",
        "# remark\n0;0;\r\n0.02;0.1;\r\n0.04;-0.2;\r\n0.06;0.05;\r\n",
        "\u{feff}0\t0\n0.02\t0.1\n0.04\t-0.2\n0.06\t5D-2\n",
        "0, 0\n0.02, 0.1\n\n0.04, -0.2\n0.06, 0.05",
        "A STATION, 180\nACCELERATION IN UNITS OF G\nNPTS=   4, DT=   .0200 SEC,\n  .0 .1 -.2\n  .05\n",
        "STATION\n4 0.02 NPTS, DT\n0 0.1\n-0.2 0.05\n",
        "10.00 0\n10.02 0.1\n10.04 -0.2\n10.06 0.05",
    ];
    for form in forms {
        let record = g(form).unwrap_or_else(|faults| panic!("{form}: {faults:?}"));
        assert!((record.step_s - expected.step_s).abs() < 1e-12, "{form}");
        assert_eq!(record.accelerations, expected.accelerations, "{form}");
    }
    let column = RecordForm { unit: RecordUnit::MetresPerS2, step_s: Some(0.02) };
    let record = read_record("0\n0.980665\n-1.96133\n0.4903325", &column).unwrap();
    assert!(record.accelerations.iter().zip(&expected.accelerations).all(|(a, b)| (a - b).abs() < 1e-12));
    // Times printed with four digits for a step of 1/60 s.
    let coarse: String = (0..120).map(|place| format!("{:.4} 0.1\n", f64::from(place) / 60.0)).collect();
    assert!((g(&coarse).unwrap().step_s - 1.0 / 60.0).abs() < 1e-6);
}

/// Time, horizontal, vertical; but three values a row behind a header are one motion still.
#[test]
fn a_third_column_is_the_vertical_motion() {
    let form = |step_s| RecordForm { unit: RecordUnit::G, step_s };
    let read = read_records("t,h,v\n0,0.1,-0.1\n0.02,0.2,-0.2\n0.04,0.3,-0.3\n", &form(None)).unwrap();
    assert_eq!(read.horizontal, Record { step_s: 0.02, accelerations: vec![0.1, 0.2, 0.3] });
    assert_eq!(read.vertical, Some(Record { step_s: 0.02, accelerations: vec![-0.1, -0.2, -0.3] }));
    let text = "0 0.1 -0.1\n0.02 0.2 -0.2\n0.04 0.3 -0.3\n";
    assert_eq!(read_records(text, &form(Some(0.02))).unwrap().vertical.unwrap().accelerations.len(), 3);
    let rows = "NPTS= 6, DT= .01 SEC\n0 0.1 -0.1\n0.02 0.2 -0.2\n";
    assert_eq!(read_records(rows, &form(None)).unwrap().horizontal.accelerations.len(), 6);
    assert_eq!(read_records("0 0\n0.02 0.1\n0.04 0\n", &form(None)).unwrap().vertical, None);
}

#[test]
fn odd_records_are_faults_with_their_lines() {
    use Problem::*;
    let cases: [(&str, &[(u32, Problem)]); 20] = [
        ("", &[(1, Missing)]),
        ("words only\n", &[(1, Missing)]),
        ("0 0\n0.02 0.1\n0.06 0.2\n0.08 0\n", &[(3, UnevenSteps)]),
        ("0 0\n0.02 0.1\n0.02 0.2\n0.04 0\n", &[(3, UnevenSteps)]),
        ("0 0\n0.02 nan\n0.04 0\n", &[(2, NotFinite)]),
        ("0 0\n0.02 1e999\n0.04 inf\n", &[(2, NotFinite), (3, NotFinite)]),
        ("0 0\n0.02 abc\n0.04 0\n", &[(2, NotANumber)]),
        ("0 0\n0.02\n0.04 0\n", &[(2, WrongCount)]),
        ("0;0,1\n0,02;0,2\n0,04;0,1\n", &[(1, Missing)]),
        ("0 0,1\n0,02 0,2\n0,04 0,1\n", &[(1, Missing)]),
        ("0 0\n0,02 0,2\n", &[(2, NotANumber)]),
        ("0,0063\n0,0036\n0,0010\n", &[(1, UnevenSteps), (2, UnevenSteps), (3, UnevenSteps)]),
        ("0.1\n0.2\n0.3\n", &[(1, Missing)]),
        ("0 1 2 3\n0.02 1 2 3\n0.04 3 4 5\n", &[(1, WrongCount)]),
        ("0 1 2\n0.02 1\n0.04 3 4\n", &[(2, WrongCount)]),
        ("0 1 2\n0.02 1 2\n0.06 3 4\n", &[(3, UnevenSteps)]),
        ("0 1 2\n0.02 1 5.1\n0.04 3 4\n", &[(2, UnlikelyPeak)]),
        ("NPTS= 7, DT= .02\n0.1 0.2 0.3\n0.1 0.2 0.3\n", &[(3, WrongCount)]),
        ("0 0\n0.02 9.81\n0.04 0\n", &[(2, UnlikelyPeak)]),
        ("0 0\n0.02 0.1\n", &[(1, WrongCount)]),
    ];
    for (text, expected) in cases {
        assert_eq!(g(text).unwrap_err(), expected, "{text:?}");
    }
    assert!(g("0 0\n0.02 4.99\n0.04 0\n").is_ok() && g("0 0\n0.02 5.01\n0.04 0\n").is_err());
    assert!(g("0 0\n0.2 0.1\n0.4 0\n").is_ok() && g("0 0\n0.201 0.1\n0.402 0\n").is_err());
}

/// Times that contradict the step said beside them, run backwards or stand in too many columns are never taken for
/// accelerations, however small the unit makes them.
#[test]
fn times_are_never_read_as_accelerations() {
    use Problem::*;
    let times = |step: f64, columns: usize| -> String {
        let row = |place: usize| {
            let more = [",0.5", ",0.5,-0.25", ",0.5,-0.25,0.125"][columns - 2];
            format!("{:.3}{more}\n", 1.0 + step * place as f64)
        };
        (0..20).map(row).collect()
    };
    let read = |text: &str, unit, step_s| {
        let read = read_records(text, &RecordForm { unit, step_s });
        read.map(|read| read.horizontal.accelerations.len()).map_err(|faults| (faults[0].line, faults[0].problem))
    };
    for unit in RecordUnit::ALL {
        for columns in [2, 3] {
            assert_eq!(read(&times(0.02, columns), unit, None), Ok(20));
            assert_eq!(read(&times(0.02, columns), unit, Some(0.02)), Ok(20));
            assert_eq!(read(&times(0.02, columns), unit, Some(0.01)), Err((1, UnevenSteps)));
            assert_eq!(read(&times(-0.02, columns), unit, Some(0.02)), Err((1, UnevenSteps)));
            assert_eq!(read(&times(-0.02, columns), unit, None), Err((1, UnevenSteps)));
            // Milliseconds.
            assert_eq!(read(&times(1.0, columns), unit, None), Err((1, UnevenSteps)));
            let counted = format!("NPTS= 21, DT= .02\n{}", times(0.02, columns));
            assert_eq!(read(&counted, unit, None), Err((21, WrongCount)));
            let coarse = times(0.02, columns).replace("1.060", "1.040");
            assert_eq!(read(&coarse, unit, Some(0.02)).unwrap_err().1, UnevenSteps);
        }
        assert_eq!(read(&times(0.02, 4), unit, Some(0.02)), Err((1, WrongCount)));
        // Four values a row behind a header are one motion.
        let values = "DT= .02\n0.1 0.2 0.3 0.4\n-.1 0.2 0.3 0.4\n.2 0.2 0.3 0.4\n.1 0.2 0.3 0.4\n";
        assert_eq!(read(values, unit, None), Ok(16));
    }
}

#[test]
fn commas_for_points_and_odd_headers_are_told() {
    use Problem::*;
    let read = |text: &str| {
        let read = read_records(text, &RecordForm { unit: RecordUnit::Gal, step_s: None });
        read.map(|read| read.horizontal).map_err(|faults| (faults[0].line, faults[0].problem))
    };
    assert_eq!(read("DT= .02\n0,12\n-0,35\n1,07\n-2,5\n"), Err((2, NotANumber)));
    assert_eq!(read("DT= .02\n0,12,0,31\n-0,35,0,2\n1,07,1,3\n"), Err((2, NotANumber)));
    // Two values a row with a sign, a point or a blank are two values.
    assert_eq!(read("DT= .02\n0, 12\n-0, 35\n1, 07\n").unwrap().accelerations.len(), 6);
    assert_eq!(read("DT= .02\n0,12\n-0,-35\n1,07\n").unwrap().accelerations.len(), 6);
    assert_eq!(read("1 2\r-1 2\r3 4\n"), Err((1, Missing)));
    assert_eq!(read("DT= .02\n1 2\r-1 2\r3 4\n"), Err((1, WrongCount)));
    // Other numbers in a line of the header are not the step.
    assert_eq!(read("Station 0.05 km, DT= .02 s\n1\n-1\n3\n").unwrap().step_s, 0.02);
    assert_eq!(read("Event 4, NPTS= 3, DT= .02 s\n1\n-1\n3\n").unwrap().step_s, 0.02);
    assert_eq!(read("3 0.02 NPTS, DT\n1\n-1\n3\n").unwrap().step_s, 0.02);
    assert_eq!(read("180 3 0.02 NPTS, DT\n1\n-1\n3\n"), Err((2, Missing)));
}

#[test]
fn five_million_rows_are_refused_at_once() {
    let text = "0.1\n".repeat(5_000_000);
    let began = std::time::Instant::now();
    assert_eq!(g(&text).unwrap_err(), [(1, Problem::TooLong)]);
    assert!(began.elapsed().as_millis() < 100);
    let form = RecordForm { unit: RecordUnit::G, step_s: Some(0.01) };
    let rows = |count: usize| read_record(&"0.1\n".repeat(count), &form);
    assert!(rows(200_000).is_ok());
    assert_eq!(rows(200_001).unwrap_err()[0].problem, Problem::TooMany);
    assert_eq!(rows(1_900_000).unwrap_err()[0].problem, Problem::TooMany);
}

#[test]
fn no_text_makes_the_reader_panic() {
    let mut random = Random::new(4);
    let pieces = [
        "0", "0.02", "-", "+", ".", ",", ";", " ", "\t", "\n", "\r\n", "e", "E9", "nan", "NPTS=", "DT=", "é", "#",
        "1e308", "9",
    ];
    for _ in 0..20_000 {
        let text: String = (0..random.below(40)).map(|_| pieces[random.below(pieces.len())]).collect();
        for step_s in [None, Some(0.01)] {
            if let Ok(record) = read_record(&text, &RecordForm { unit: RecordUnit::Gal, step_s }) {
                assert!(record.accelerations.iter().all(|value| value.is_finite()) && record.step_s > 0.0);
            }
        }
    }
}
