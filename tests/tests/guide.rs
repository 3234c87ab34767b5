//! The guide: what every chapter has, and that what it says without scripts is what the engine says.

use serde_json::{Value, json};
use steadfoot::calc::{Status, System};
use steadfoot::project;
use steadfoot::report::outcome::Report;
use steadfoot_site::chapter::{Chapter, Place};
use steadfoot_site::guide::Guide;
use steadfoot_site::worksheet;
use steadfoot_site::workspace::Workspace;

fn workspace() -> Workspace {
    Workspace::here().expect("the repository is where the builder was compiled")
}

fn guide() -> Guide {
    Guide::load(&workspace().guide()).expect("the chapters are read")
}

/// The fences of a chapter that begin with a word: what stands behind the word, and the lines between.
fn fences<'a>(chapter: &'a Chapter, word: &str) -> Vec<(&'a str, &'a str)> {
    let open = format!("```{word} ");
    let inside = chapter.text.split(open.as_str()).skip(1).map(|rest| rest.split("```").next().unwrap());
    inside.map(|text| text.split_once('\n').unwrap()).collect()
}

fn report(demo: &str) -> Report {
    let text = std::fs::read_to_string(workspace().demo_configs().join(demo)).unwrap();
    project::assess(&project::read(&text, System::Si).unwrap())
}

#[test]
fn every_chapter_has_one_question_a_drawing_a_worksheet_an_example_and_says_where_it_stops() {
    let guide = guide();
    let chapters: Vec<&Chapter> = guide.at(Place::Chapter).collect();
    assert!(chapters.len() >= 8, "{}", chapters.len());
    for chapter in chapters {
        let made = |word: &str| fences(chapter, "made").iter().filter(|(info, _)| info.trim() == word).count();
        assert!(chapter.question.as_ref().is_some_and(|question| question.ends_with('?')), "{}", chapter.file);
        assert_eq!(made("drawings"), 1, "{}", chapter.file);
        assert!(made("example") >= 1, "{}", chapter.file);
        assert!(!fences(chapter, "worksheet").is_empty(), "{}", chapter.file);
        assert_eq!(chapter.text.matches("\n## Where it stops\n").count(), 1, "{}", chapter.file);
        assert_eq!(fences(chapter, "worksheet")[0].0.trim(), chapter.part.as_deref().unwrap(), "{}", chapter.file);
    }
}

#[test]
fn a_chapter_reads_in_five_minutes() {
    for chapter in guide().at(Place::Chapter) {
        let words = chapter.text.split_whitespace().count();
        assert!((300..1101).contains(&words), "{} has {words} words", chapter.file);
    }
}

#[test]
fn every_example_of_the_guide_agrees_with_its_source() {
    let mut examples = 0;
    for chapter in guide().chapters {
        for (_, body) in fences(&chapter, "made").iter().filter(|(info, _)| info.trim() == "example") {
            let html = worksheet::made("example", body).unwrap_or_else(|fault| panic!("{}: {fault:#}", chapter.file));
            assert!(html.contains("agrees") && !html.contains("differs"), "{}: {body}", chapter.file);
            examples += 1;
        }
    }
    assert!(examples >= 6);
}

#[test]
fn worksheets_without_scripts_tell_every_check_as_the_engine_does() {
    for demo in ["02-full.json", "09-must-not-pass.json", "10-cannot-be-said.json"] {
        let html = worksheet::static_content("check", &json!({ "demo": demo })).unwrap();
        let report = report(demo);
        assert_eq!(html.matches("<li class=\"check-row ").count(), report.checks.len(), "{demo}");
        for check in &report.checks {
            let row =
                html.split("<li class=\"check-row ").find(|row| row.contains(&format!("data-check=\"{}\"", check.id)));
            let row = row.unwrap_or_else(|| panic!("{demo} does not tell {}", check.id));
            let is_compared = matches!(check.status, Status::Holds | Status::Fails);
            let told =
                is_compared.then_some(check.utilisation).flatten().map(|used| format!("data-utilisation=\"{used}\""));
            assert_eq!(told.is_some(), row.contains("data-utilisation"), "{demo}, {}", check.id);
            assert!(told.is_none_or(|told| row.contains(&told)), "{demo}, {}", check.id);
            assert_eq!(check.status == Status::Fails, row.contains("pointer beyond"), "{demo}, {}", check.id);
        }
        let verdict = serde_json::to_value(report.verdict).unwrap();
        assert!(html.contains(&format!("data-answer=\"{}\"", verdict.as_str().unwrap())), "{demo}");
    }
}

#[test]
fn a_pointer_stands_where_its_utilisation_is_on_the_scale() {
    let html = worksheet::static_content("check", &json!({ "demo": "09-must-not-pass.json" })).unwrap();
    let mut beyond_one = 0;
    for pointer in html.split("data-pointer=\"").skip(1) {
        let used: f64 = pointer.split('"').next().unwrap().parse().unwrap();
        let place = pointer.split("translate(").nth(1).unwrap().split(' ').next().unwrap();
        let place: f64 = place.parse().unwrap();
        let expected = 8.0 + 150.0 * used;
        let is_there = if expected <= 200.0 { (place - expected).abs() < 0.01 } else { place > 200.0 };
        assert!(is_there, "{used} stands at {place}");
        beyond_one += usize::from(used > 1.0 && place > 158.0);
    }
    assert!(beyond_one > 0, "nothing fails, so the test proves little");
}

#[test]
fn numbers_in_prose_are_the_engines_and_nothing_else_can_be_asked_for() {
    let report = report("02-full.json");
    let mass = worksheet::inline("02 mass full").unwrap();
    assert_eq!(mass, format!("<span class=\"made\">{}\u{a0}kg</span>", report.states[0].mass_kg));
    for wrong in
        ["02", "99 mass full", "02 mass nowhere", "02 colour full", "02 utilisation anchor.moon", "count stars"]
    {
        assert!(worksheet::inline(wrong).is_err(), "{wrong}");
    }
}

#[test]
fn a_made_block_or_a_worksheet_of_an_unknown_kind_is_refused() {
    assert!(worksheet::made("moon", "").is_err());
    assert!(worksheet::made("example", "{\"block\": \"no such block\"}").is_err());
    assert!(worksheet::made("drawings", "{}").is_err());
    assert!(worksheet::static_content("moon", &Value::Null).is_err());
    assert!(worksheet::static_content("check", &json!({ "demo": "no-such-file" })).is_err());
}
