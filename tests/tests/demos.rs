//! Every example says something in words that is true of it and false of its neighbour.

use std::path::PathBuf;

use steadfoot::calc::{Role, Status, System};
use steadfoot::project::{self, Project};
use steadfoot::report::outcome::{CheckTold, Report, Verdict};
use steadfoot::report::table::Cell;
use steadfoot::study::study;

struct Demo {
    file: &'static str,
    project: Project,
    report: Report,
}

impl Demo {
    fn check(&self, id: &str) -> &CheckTold {
        self.report.checks.iter().find(|check| check.id == id).unwrap_or_else(|| panic!("{}: no {id}", self.file))
    }

    fn used(&self, id: &str) -> f64 {
        self.check(id).utilisation.unwrap_or(0.0)
    }

    fn state_of(&self, id: &str) -> Option<&str> {
        self.check(id).at.map(|at| self.report.states[at.state].name.as_str())
    }

    fn governing(&self) -> &CheckTold {
        &self.report.checks[self.report.governs.expect("something governs")]
    }

    fn push(&self) -> f64 {
        self.check("free.tipping").value.expect("there is a push")
    }

    fn smallest_push(&self) -> f64 {
        let site = self.project.site.as_ref().expect("there is a site");
        let of = |key: &str| {
            let place = site.rule.fields.iter().position(|field| field.key == key);
            place.and_then(|place| site.values.number(place)).unwrap_or(f64::NAN)
        };
        0.3 * of("s_ds") * of("importance_factor")
    }
}

type Claim = (&'static str, fn(&Demo) -> bool);

/// The claims of `claims.json`, in its order, as code.
const CLAIMS: &[Claim] = &[
    ("01-empty-frame.json", |demo| {
        demo.project.contents.is_empty()
            && demo.report.checks.iter().all(|check| {
                !check.id.starts_with("anchor")
                    || check.id.ends_with("spacing")
                    || check.id.ends_with("edge")
                    || check.utilisation.unwrap_or(0.0) < 0.1
            })
    }),
    ("02-full.json", |demo| {
        demo.report.verdict == Verdict::Holds
            && demo.governing().of.starts_with("full")
            && !demo.project.contents.is_empty()
            && (demo.push() - demo.smallest_push()).abs() < 1e-9
            && demo.project.cabinet.feet.len() == 4
            && demo.used("free.tipping") < 1.2
    }),
    ("03-part-filled.json", |demo| !["full", "empty"].contains(&demo.governing().of.split('/').next().unwrap_or(""))),
    ("04-off-centre.json", |demo| {
        let at = demo.check("free.tipping").at.expect("it tips somewhere");
        demo.report.states[at.state].centre_mm[0] < -100.0
            && (at.direction_rad.abs() - std::f64::consts::PI).abs() < 1e-6
    }),
    ("05-drawer-out.json", |demo| {
        let at = demo.check("free.tipping").at.expect("it tips somewhere");
        demo.state_of("free.tipping") == Some("service")
            && (at.direction_rad + std::f64::consts::FRAC_PI_2).abs() < 1e-6
    }),
    ("06-upper-floor.json", |demo| demo.push() > 1.01 * demo.smallest_push()),
    ("07-slab-edge.json", |demo| demo.used("anchor.shear.breakout") > demo.used("anchor.shear.steel")),
    ("08-two-wide-bases.json", |demo| {
        let at = demo.check("foot.bearing").at.expect("a foot is pressed");
        let scene = project::scene(&demo.project, Some(&at));
        scene.feet.iter().any(|foot| {
            let pressed: f64 = foot.pressed.iter().map(|polygon| polygon.area_mm2()).sum();
            pressed > 0.0 && pressed < 0.9 * foot.outline.area_mm2() && foot.outline.area_mm2() > 100_000.0
        })
    }),
    ("09-must-not-pass.json", |demo| {
        demo.report.verdict == Verdict::DoesNotHold
            && demo
                .report
                .checks
                .iter()
                .any(|check| check.status == Status::Fails && check.span.is_some_and(|ends| ends[0] > 1.0))
    }),
    ("10-cannot-be-said.json", |demo| demo.report.verdict == Verdict::CannotBeSaid),
    ("11-inch-bolts.json", |demo| demo.report.anchor_rule == Some("aci-318-19")),
    ("12-stiffness-decides.json", |demo| {
        demo.report.verdict == Verdict::DoesNotHold
            && demo.governing().span.is_some_and(|ends| ends[0] <= 1.0 && ends[1] > 1.0)
    }),
    ("13-partial-factors.json", |demo| {
        let edge = demo.check("anchor.shear.breakout");
        demo.report.anchor_rule == Some("en-1992-4-2018")
            && demo.governing().id == edge.id
            && edge.utilisation > demo.check("anchor.shear.pryout").utilisation.map(|used| 2.0 * used)
    }),
    ("17-shake-table.json", |demo| {
        // Utilisations in the order of the study: payload, then overturning moment.
        let Some(Ok(shown)) = study("test-rig").map(|study| (study.make)(&demo.project, "")) else { return false };
        let used: Vec<f64> = shown.tables[1]
            .rows
            .iter()
            .filter_map(|row| if let Cell::Number(used) = row.cells[1] { Some(used) } else { None })
            .collect();
        used.len() >= 2 && used[0] <= 1.0 && used[1] > 1.0
    }),
    ("19-as-drilled.json", |demo| {
        let failing = demo.report.checks.iter().filter(|check| check.status == Status::Fails);
        let is_only = failing.filter(|check| check.role == Role::Required).all(|check| check.id == "anchor.as-built");
        let planned = project::quick(&project::as_planned(&demo.project)).0;
        demo.report.verdict == Verdict::DoesNotHold && is_only && planned == Verdict::Holds
    }),
    ("20-row-of-cabinets.json", |demo| {
        let mut alone = demo.project.clone();
        alone.neighbours.clear();
        let alone = project::assess(&alone);
        let breakout = alone.checks.iter().find(|check| check.id == "anchor.tension.breakout");
        let alone = breakout.and_then(|check| check.utilisation).unwrap_or(f64::INFINITY);
        // What each bolt has of the concrete to itself ends half way to the neighbour's.
        let concrete = demo.used("anchor.tension.breakout").max(demo.used("anchor.tension.tributary"));
        !demo.project.neighbours.is_empty() && demo.report.verdict == Verdict::Holds && concrete > 1.1 * alone
    }),
    ("21-drilled-bolts.json", |demo| {
        demo.report.verdict == Verdict::CannotBeSaid && demo.check("anchor.tension.bond").status == Status::NotCovered
    }),
    ("22-on-the-hook.json", |demo| {
        let status = |id: &str| demo.report.checks.iter().find(|check| check.id == id).map(|check| check.status);
        status("lift.leg") == Some(Status::Holds)
            && status("lift.sling") == Some(Status::Holds)
            && status("lift.attachment") == Some(Status::Fails)
    }),
    ("23-slender-braces.json", |demo| {
        let status = |project: &project::Project| {
            let checks = project::assess(project).checks;
            checks.into_iter().find(|check| check.id == "frame.brace").map(|check| check.status)
        };
        let mut crossed = demo.project.clone();
        let rear = steadfoot::frame::FIELDS.iter().position(|field| field.key == "sides_y");
        if let (Some(structure), Some(rear)) = (&mut crossed.structure, rear) {
            structure.set_choice(rear, 2);
        }
        status(&demo.project) == Some(Status::Fails) && status(&crossed) == Some(Status::Holds)
    }),
    ("40-slab-on-the-ground.json", |demo| {
        let find = |id: &str| demo.report.checks.iter().find(|check| check.id == id);
        find("slab.quake.bending").is_some_and(|check| check.status == Status::Holds)
            && demo.used("slab.quake.bending") > demo.used("foot.bearing")
    }),
    ("41-raised-floor.json", |demo| {
        let find = |id: &str| demo.report.checks.iter().find(|check| check.id == id);
        find("raised.panel").is_some_and(|check| check.status == Status::Fails)
    }),
    ("42-base-rails.json", |demo| {
        // The same cabinet on four feet of 120 mm at the ends of its rails.
        let mut on_feet = demo.project.clone();
        let Some(floor) = &mut on_feet.floor else { return false };
        if floor.values.choice(steadfoot::floor::STANDS_ON) != Some(1) {
            return false;
        }
        floor.values.set_choice(steadfoot::floor::STANDS_ON, 0);
        on_feet.cabinet.feet = demo
            .project
            .cabinet
            .feet
            .iter()
            .flat_map(|rail| {
                [-620.0, 620.0].map(|y_mm| {
                    let mut foot = rail.clone();
                    foot.name = format!("{} {y_mm}", rail.name);
                    foot.at.y_mm = y_mm;
                    foot.size = steadfoot::geometry::Size::new(120.0, 120.0);
                    foot
                })
            })
            .collect();
        let feet = project::assess(&on_feet);
        let used = |id: &str| feet.checks.iter().find(|check| check.id == id).and_then(|check| check.utilisation);
        let bending = used("slab.quake.bending").unwrap_or(f64::INFINITY);
        demo.report.verdict == Verdict::Holds
            && demo.used("foot.bearing") < 0.5 * used("foot.bearing").unwrap_or(0.0)
            && demo.used("slab.quake.bending") > bending
    }),
    ("50-nobody-knows.json", |demo| {
        let Some(unknown) = steadfoot::explore::assess_open(&demo.project).unknown else { return false };
        let Some(tried) = &unknown.tried else { return false };
        let path = |input: usize| unknown.inputs[input].path.as_str();
        tried.holds > 0
            && tried.fails > 0
            && path(tried.settles[0].input) == "anchorage.embedment_mm"
            && tried.settles[0].decides > 0.9
            && tried.settles[1..].iter().all(|settles| settles.decides == 0.0)
    }),
    ("51-filled-from-the-top.json", |demo| {
        let Some(mut search) = steadfoot::explore::Reorder::new(&demo.project) else { return false };
        search.finish();
        let heaviest = |place: usize| demo.project.contents[place].mass_kg;
        demo.report.verdict == Verdict::DoesNotHold
            && search.best.verdict == Verdict::Holds
            && heaviest(search.best.order[0]) >= heaviest(search.best.order[7])
    }),
    ("53-four-in-a-row.json", |demo| {
        let study = steadfoot::study::study("cabinets-in-a-row").expect("a known study");
        let Ok(shown) = (study.make)(&demo.project, "") else { return false };
        let last = shown.tables[1].rows.last().map(|row| row.cells.clone()).unwrap_or_default();
        let [.., Cell::Number(tied), Cell::Number(alone), _, _, _] = last[..] else { return false };
        tied > 4.0 * alone
    }),
];

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs")
}

fn demos() -> Vec<Demo> {
    CLAIMS
        .iter()
        .map(|&(file, _)| {
            let text = std::fs::read_to_string(folder().join(file)).expect(file);
            let project =
                project::read(&text, System::Si).unwrap_or_else(|faults| panic!("{file}: {}", faults[0].sentence()));
            let report = project::assess(&project);
            Demo { file, project, report }
        })
        .collect()
}

#[test]
fn every_claim_is_true_of_its_demo() {
    for (demo, (_, claim)) in demos().iter().zip(CLAIMS) {
        assert!(claim(demo), "the claim of {} is false", demo.file);
    }
}

#[test]
fn every_claim_is_false_of_its_neighbours() {
    let demos = demos();
    for (place, (file, claim)) in CLAIMS.iter().enumerate() {
        for neighbour in [(place + CLAIMS.len() - 1) % CLAIMS.len(), (place + 1) % CLAIMS.len()] {
            assert!(!claim(&demos[neighbour]), "the claim of {file} is true of {} too", demos[neighbour].file);
        }
    }
}

#[test]
fn every_demo_has_a_claim_in_words_and_in_code() {
    let words = std::fs::read_to_string(folder().join("claims.json")).expect("claims.json");
    let words: serde_json::Map<String, serde_json::Value> =
        serde_json::from_str(&words).expect("claims.json is an object");
    let mut files: Vec<String> = std::fs::read_dir(folder())
        .expect("demo-configs")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .filter(|name| name.starts_with(|first: char| first.is_ascii_digit()))
        .collect();
    files.sort();
    let told: Vec<String> = words.keys().cloned().collect();
    let coded: Vec<String> = CLAIMS.iter().map(|(file, _)| file.to_string()).collect();
    assert_eq!(files, told);
    assert_eq!(files, coded);
}
