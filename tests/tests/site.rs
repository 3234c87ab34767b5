//! The finished site: what it holds, that nothing in it asks for anything elsewhere, that its policy fits its texts.

use std::sync::OnceLock;

use steadfoot_site::{
    build::{self, Site},
    folder, one_file,
    parts::Parts,
    policy, texts,
    workspace::Workspace,
};

fn workspace() -> Workspace {
    Workspace::here().expect("the repository is where the builder was compiled")
}

/// Made once for all tests of this file.
fn site() -> &'static Site {
    static SITE: OnceLock<Site> = OnceLock::new();
    SITE.get_or_init(|| build::make(&workspace()).expect("the site is made"))
}

fn text(name: &str) -> &'static str {
    std::str::from_utf8(site().dist.get(name).expect("the file is there")).expect("the file is text")
}

fn pages() -> Vec<(&'static str, &'static str)> {
    let names = site().dist.iter().map(|(name, _)| name).filter(|name| name.ends_with(".html"));
    names.map(|name| (name, text(name))).collect()
}

/// The texts between every pair of these.
fn between<'a>(html: &'a str, open: &str, close: &str) -> Vec<&'a str> {
    html.split(open).skip(1).map(|rest| rest.split(close).next().unwrap_or("")).collect()
}

#[test]
fn the_folder_and_the_one_file_are_complete() {
    for name in ["index.html", "check.html", "verification.html", "sources.html", one_file::NAME] {
        assert!(!text(name).is_empty(), "{name}");
    }
    for name in [
        folder::SCRIPT,
        folder::TEXTS,
        folder::LATER,
        folder::STYLE,
        folder::FONT,
        "steadfoot.js",
        "math-font-licence.txt",
    ] {
        assert!(site().dist.get(name).is_some_and(|content| !content.is_empty()), "{name}");
    }
}

#[test]
fn the_one_file_holds_every_page_and_every_link_in_it_leads_somewhere() {
    let html = text(one_file::NAME);
    for (name, _) in pages().into_iter().filter(|(name, _)| *name != one_file::NAME) {
        let id = name.trim_end_matches(".html");
        assert!(html.contains(&format!("<article id=\"{id}\"")), "{name} is not in the one file");
    }
    for target in between(html, "href=\"#", "\"") {
        assert!(html.contains(&format!(" id=\"{target}\"")), "#{target} leads nowhere");
    }
    let ids = between(html, " id=\"", "\"");
    let mut different = ids.clone();
    different.sort_unstable();
    different.dedup();
    assert_eq!(ids.len(), different.len(), "an id stands twice in the one file");
}

#[test]
fn every_page_states_a_policy_before_anything_that_it_governs() {
    for (name, html) in pages() {
        let policy = html.find("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ");
        let policy = policy.unwrap_or_else(|| panic!("{name} has no policy"));
        for governed in ["<script", "<style", "<link"] {
            assert!(html.find(governed).is_none_or(|at| at > policy), "{name}: {governed} stands before the policy");
        }
        assert!(!html.contains("unsafe-inline") && !html.contains("unsafe-eval' "), "{name} is too lenient");
    }
}

#[test]
fn the_policy_names_the_hash_of_every_inline_text() {
    for (name, html) in pages() {
        let stated = between(html, "Content-Security-Policy\" content=\"", "\"")[0];
        let directive = |name: &str| {
            stated.split("; ").find(|directive| directive.starts_with(name)).unwrap_or_default().to_string()
        };
        for style in between(html, "<style>", "</style>") {
            assert!(directive("style-src ").contains(&policy::hash(style)), "{name}: a style has another hash");
        }
        for script in between(html, "<script>", "</script>") {
            assert!(directive("script-src ").contains(&policy::hash(script)), "{name}: a script has another hash");
        }
        let inline = between(html, "<script>", "</script>").len();
        assert_eq!(inline, usize::from(name == one_file::NAME), "{name} has {inline} inline scripts");
    }
}

#[test]
fn nothing_is_loaded_from_elsewhere() {
    let own = ["page.css", "texts.js", "later.js", "page.js"];
    for (name, html) in pages() {
        // Code and style are looked at apart from the markup.
        let mut markup = html.to_string();
        for (open, close) in [("<script>", "</script>"), ("<style>", "</style>")] {
            for inside in between(html, open, close) {
                markup = markup.replacen(inside, "", 1);
            }
        }
        for source in between(&markup, " src=\"", "\"") {
            assert!(own.contains(&source) && name != one_file::NAME, "{name} loads {source}");
        }
        for link in between(&markup, "<link ", ">") {
            let expected = link.contains("href=\"data:,\"") || link.contains("href=\"page.css\"");
            assert!(expected, "{name} loads by <link {link}>");
        }
        for forbidden in [" style=\"", "<iframe", "<object", "<embed", "<base", "<form", "srcset=", "@import"] {
            assert!(!markup.contains(forbidden), "{name} contains {forbidden}");
        }
    }
    for address in between(text(folder::STYLE), "url(", ")") {
        assert_eq!(address, folder::FONT);
    }
    // The binding script carries a loader of its own, which nothing calls; the page's own code carries none.
    let parts = Parts::load(&workspace().page()).expect("the page's parts are read");
    for call in ["fetch(", "XMLHttpRequest", "sendBeacon", "WebSocket", "EventSource", "importScripts", "import("] {
        assert!(!parts.script.contains(call) && !parts.later_script.contains(call), "the page's code contains {call}");
    }
}

#[test]
fn every_page_says_that_scripts_are_off_or_that_it_was_altered_and_states_the_cautions() {
    for (name, html) in pages() {
        assert!(html.contains("<noscript><p id=\"scripts-off\">"), "{name}");
        assert!(html.contains("<p id=\"not-started\""), "{name}");
        assert_eq!(
            between(&html.replace("&#39;", "'"), "<p class=\"caution\">", "</p>"),
            steadfoot::report::cautions::CAUTIONS,
            "{name}"
        );
    }
    // What hides the notice stands at the very end, so that a file that was cut short keeps it.
    let html = text(one_file::NAME);
    assert!(html.ends_with(",null);\n})();\n</script>\n</body>\n</html>\n"));
}

#[test]
fn the_same_sources_make_the_same_bytes() {
    let again = build::make(&workspace()).expect("the site is made");
    for (name, content) in site().dist.iter() {
        assert!(again.dist.get(name) == Some(content), "{name} differs");
    }
}

#[test]
fn no_path_of_this_machine_is_in_the_outputs() {
    let workspace = workspace();
    let root = workspace.root().to_string_lossy().into_owned();
    let contains = |content: &[u8], text: &str| content.windows(text.len()).any(|window| window == text.as_bytes());
    for module in &site().wasm {
        assert!(!contains(module, &root), "the engine contains {root}");
        assert!(!contains(module, ".cargo/registry"), "the engine contains the path of a library");
    }
    for (name, content) in site().dist.iter() {
        assert!(!contains(content, &root), "{name} contains {root}");
    }
}

#[test]
fn the_landing_page_alone_does_without_the_later_part_and_shows_the_example_whose_texts_come_first() {
    for (name, html) in pages().into_iter().filter(|(name, _)| *name != one_file::NAME) {
        assert_eq!(html.contains("src=\"later.js\""), name != "index.html", "{name}");
    }
    assert!(text("index.html").contains(texts::landing::DEMO));
}

#[test]
fn every_part_of_the_page_is_listed() {
    let parts = Parts::load(&workspace().page()).expect("the page's parts are read");
    assert!(parts.unlisted.is_empty(), "not in page/order.txt: {:?}", parts.unlisted);
}

#[test]
fn every_part_of_a_project_file_stands_once_in_the_form() {
    let form = include_str!("../../site/page/form.js");
    let sections = between(form, "const FORM_SECTIONS = [", "];")[0];
    let listed: Vec<&str> =
        between(sections, "parts: [", "]").into_iter().flat_map(|list| between(list, "\"", "\"")).collect();
    let listed: Vec<&str> =
        listed.into_iter().filter(|id| id.trim_matches([',', ' ']) == *id && !id.is_empty()).collect();
    for part in steadfoot::project::parts::PARTS {
        assert_eq!(listed.iter().filter(|id| **id == part.id).count(), 1, "{}", part.id);
    }
    assert_eq!(listed.len(), steadfoot::project::parts::PARTS.len());
}

#[test]
fn every_part_keeps_its_budget() {
    let over: Vec<_> = site().sizes.0.iter().filter(|size| !size.passes()).collect();
    assert!(over.is_empty(), "over budget by more than 5 %: {over:#?}\n{}", site().sizes);
}
