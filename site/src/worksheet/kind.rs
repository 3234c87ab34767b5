//! The kinds of worksheets: what each shows, the same as the page's.

use anyhow::Context;
use steadfoot::report::answer::Topic;

use super::drawings::View;

/// What a worksheet of one kind shows.
pub struct Kind {
    /// Its word on the fence.
    pub word: &'static str,
    /// Its heading, where the worksheet gives none.
    pub title: &'static str,
    pub views: &'static [View],
    pub topics: &'static [Topic],
    pub tables: &'static [Table],
    /// How the ids of its checks begin; none for a worksheet without a list of checks.
    pub checks: Option<&'static str>,
    /// Ids of the studies that stand in it, open.
    pub studies: &'static [&'static str],
}

/// A table of what was assessed.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Table {
    States,
    Cases,
}

const ALL_VIEWS: &[View] = &[View::Plan, View::Elevation, View::Rose];
const ALL_TOPICS: &[Topic] = &[Topic::Bolted, Topic::Free, Topic::Uncovered, Topic::Governs];
const BOLTED: &[Topic] = &[Topic::Bolted, Topic::Governs];

/// A kind that shows nothing, from which the others take what they do not name.
const NOTHING: Kind = Kind { word: "", title: "", views: &[], topics: &[], tables: &[], checks: None, studies: &[] };

/// All kinds, in the order of the page's.
pub static KINDS: &[Kind] = &[
    Kind { word: "landing", title: "A live cabinet", views: ALL_VIEWS, topics: ALL_TOPICS, ..NOTHING },
    Kind {
        word: "check",
        title: "The whole check",
        views: ALL_VIEWS,
        topics: ALL_TOPICS,
        tables: &[Table::States, Table::Cases],
        checks: Some(""),
        ..NOTHING
    },
    Kind {
        word: "load-out",
        title: "What stands there",
        views: &[View::Elevation],
        topics: BOLTED,
        tables: &[Table::States],
        ..NOTHING
    },
    Kind {
        word: "demand",
        title: "How hard it is shaken",
        views: &[View::Rose],
        topics: BOLTED,
        tables: &[Table::Cases],
        ..NOTHING
    },
    Kind { word: "rules", title: "Every rule side by side", studies: &["side-by-side", "floor-level"], ..NOTHING },
    Kind { word: "shake-table", title: "What a test must show", studies: &["required-spectra", "test-rig"], ..NOTHING },
    Kind {
        word: "base-reactions",
        title: "What feet and anchors feel",
        views: &[View::Plan],
        topics: BOLTED,
        checks: Some("base."),
        ..NOTHING
    },
    Kind {
        word: "standing-free",
        title: "Whether it stays put by itself",
        views: &[View::Elevation],
        topics: &[Topic::Free],
        checks: Some("free."),
        studies: &["standing-free"],
        ..NOTHING
    },
    Kind {
        word: "rocking",
        title: "Whether it rocks, and how far",
        studies: &["rocking", "fragility", "response-spectrum"],
        ..NOTHING
    },
    Kind {
        word: "anchors",
        title: "Whether the anchors hold",
        views: &[View::Plan],
        topics: BOLTED,
        checks: Some("anchor."),
        studies: &["anchor-modes", "anchor-section", "what-would-hold"],
        ..NOTHING
    },
    Kind {
        word: "setting-out",
        title: "The setting-out sheet",
        topics: &[Topic::Bolted],
        studies: &["setting-out", "as-built"],
        ..NOTHING
    },
    Kind {
        word: "feet",
        title: "Whether the floor bears the feet",
        views: &[View::Plan],
        topics: BOLTED,
        checks: Some("foot."),
        ..NOTHING
    },
    Kind {
        word: "slab",
        title: "Whether the slab carries it",
        views: &[View::Plan],
        topics: BOLTED,
        checks: Some("slab."),
        ..NOTHING
    },
    Kind {
        word: "ways-of-standing",
        title: "Casters, levelling feet or wide bases",
        studies: &["ways-of-standing"],
        ..NOTHING
    },
    Kind { word: "pressure-map", title: "How hard each foot presses", studies: &["pressure-map"], ..NOTHING },
    Kind { word: "bolt-stiffness", title: "What soft feet and stiff bolts do", studies: &["stiffness"], ..NOTHING },
    Kind { word: "uneven-floor", title: "What an uneven floor does", studies: &["uneven-floor"], ..NOTHING },
    Kind { word: "row-of-cabinets", title: "A row of cabinets", studies: &["row-of-cabinets"], ..NOTHING },
    Kind { word: "ask-the-owner", title: "Questions to send", ..NOTHING },
    Kind { word: "row", title: "Side by side", studies: &["cabinets-in-a-row"], ..NOTHING },
    Kind {
        word: "frame",
        title: "How stiff the frame is",
        topics: &[Topic::Bolted],
        checks: Some("frame."),
        studies: &["sway"],
        ..NOTHING
    },
    Kind {
        word: "not-known",
        title: "What you do not know",
        topics: &[Topic::Bolted],
        studies: &["not-known"],
        ..NOTHING
    },
    Kind {
        word: "what-matters",
        title: "What matters most",
        topics: &[Topic::Bolted],
        studies: &["what-matters"],
        ..NOTHING
    },
    Kind {
        word: "move-down",
        title: "What to move down",
        topics: &[Topic::Bolted, Topic::Free],
        studies: &["what-to-move-down"],
        ..NOTHING
    },
    Kind { word: "moving", title: "Whether it comes to its place", checks: Some("move."), ..NOTHING },
    Kind {
        word: "limits",
        title: "How far each input can go",
        topics: &[Topic::Bolted],
        studies: &["how-far"],
        ..NOTHING
    },
    Kind {
        word: "map",
        title: "Two inputs against each other",
        topics: &[Topic::Bolted],
        studies: &["limit-map"],
        ..NOTHING
    },
    Kind { word: "lifting", title: "Whether it hangs safely", checks: Some("lift."), studies: &["hook"], ..NOTHING },
    Kind {
        word: "zone-statement",
        title: "The zone statement",
        topics: &[Topic::Bolted, Topic::Free],
        studies: &["zone-statement"],
        ..NOTHING
    },
    Kind { word: "hall", title: "A hall full", ..NOTHING },
];

/// The kind of this word.
pub fn kind(word: &str) -> anyhow::Result<&'static Kind> {
    KINDS.iter().find(|kind| kind.word == word).with_context(|| {
        let words: Vec<_> = KINDS.iter().map(|kind| kind.word).collect();
        format!("there is no worksheet of kind \"{word}\"; there are {}", words.join(", "))
    })
}

#[cfg(test)]
mod tests {
    use super::KINDS;

    #[test]
    fn the_page_knows_the_same_kinds_by_the_same_titles() {
        // The one that the landing page shows is described apart from the others, which come later.
        let landing =
            include_str!("../../page/worksheet.js").lines().find(|line| line.contains("const LANDING_KIND = {"));
        let landing = landing.unwrap().replace("const LANDING_KIND = {", "landing: {");
        let page = include_str!("../../page/worksheet_kinds.js");
        let table = page.split("const WORKSHEET_KINDS = {").nth(1).unwrap().split("\n};").next().unwrap();
        let others = table.lines().filter(|line| line.contains(": {"));
        let lines: Vec<&str> = std::iter::once(landing.as_str()).chain(others).collect();
        assert_eq!(lines.len(), KINDS.len(), "{lines:#?}");
        for (line, kind) in lines.iter().zip(KINDS) {
            let word = line.trim().trim_start_matches('"');
            assert!(word.starts_with(kind.word), "{line}");
            assert!(!line.contains("title:") || line.contains(&format!("title: \"{}\"", kind.title)), "{line}");
        }
    }
}
