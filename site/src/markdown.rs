//! A chapter's Markdown as HTML: formulas, worksheets, headings with ids, links that lead somewhere.

use anyhow::{Context, bail};
use pulldown_cmark::{CodeBlockKind, CowStr, Event, Options, Parser, Tag, TagEnd, html};

use crate::{chapter::Chapter, formula::Typesetter, kept::Kept, link::Links, style_attribute::StyleClasses, worksheet};

/// What chapters are expanded with.
pub struct Expander<'a> {
    pub typesetter: &'a Typesetter,
    pub links: &'a Links,
    pub kept: &'a Kept,
}

impl Expander<'_> {
    /// The chapter's text as HTML; style attributes become classes of `classes`.
    pub fn expand(&self, chapter: &Chapter, classes: &mut StyleClasses) -> anyhow::Result<String> {
        let options = Options::ENABLE_TABLES | Options::ENABLE_MATH | Options::ENABLE_FOOTNOTES;
        let mut written = Vec::new();
        let mut fence: Option<Fence> = None;
        let mut heading: Option<Heading> = None;
        for (event, range) in Parser::new_ext(&chapter.text, options).into_offset_iter() {
            let place = || {
                let line = chapter.text[..range.start].matches('\n').count() + chapter.head_lines + 1;
                format!("guide/{}, line {line}", chapter.file)
            };
            if let Some(open) = &mut fence {
                match event {
                    Event::Text(text) => open.body.push_str(&text),
                    Event::End(TagEnd::CodeBlock) => {
                        written.push(raw(open.expand(self.kept).with_context(place)?));
                        fence = None;
                    }
                    _ => {}
                }
                continue;
            }
            match event {
                Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(info))) if Fence::of(&info).is_some() => {
                    fence = Fence::of(&info);
                }
                Event::Start(Tag::Heading { level, .. }) => {
                    heading = Some(Heading { level: level as usize, text: String::new(), start: written.len() });
                }
                Event::End(TagEnd::Heading(_)) => {
                    if let Some(done) = heading.take() {
                        if done.level == 1 {
                            bail!("{}: the title makes the only heading of level 1; begin with ##", place());
                        }
                        let id = Links::heading_id(&chapter.name, &done.text);
                        written.insert(done.start, raw(format!("<h{} id=\"{id}\">", done.level)));
                        written.push(raw(format!("</h{}>\n", done.level)));
                    }
                }
                Event::Code(code) if code.starts_with(worksheet::MARK) => {
                    let query = &code[worksheet::MARK.len()..];
                    written.push(inline(
                        self.kept.of(&["inline", query], || worksheet::inline(query)).with_context(place)?,
                    ));
                }
                Event::InlineMath(latex) => written.push(inline(self.typesetter.in_line(&latex).with_context(place)?)),
                Event::DisplayMath(latex) => {
                    written.push(inline(self.typesetter.displayed(&latex).with_context(place)?));
                }
                Event::Start(Tag::Link { link_type, dest_url, title, id }) => {
                    let dest_url = self.links.resolve(&dest_url, &chapter.name).with_context(place)?.into();
                    written.push(Event::Start(Tag::Link { link_type, dest_url, title, id }));
                }
                Event::Start(Tag::Image { .. }) => {
                    bail!("{}: pictures are drawn by the engine; none is loaded from a file", place());
                }
                Event::Start(Tag::Table(alignments)) => {
                    written
                        .push(raw("<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"table\">\n".into()));
                    written.push(Event::Start(Tag::Table(alignments)));
                }
                Event::End(TagEnd::Table) => {
                    written.push(Event::End(TagEnd::Table));
                    written.push(raw("</div>\n".into()));
                }
                other => {
                    if let (Some(open), Event::Text(text) | Event::Code(text)) = (&mut heading, &other) {
                        open.text.push_str(text);
                    }
                    written.push(other);
                }
            }
        }
        let mut html = String::new();
        html::push_html(&mut html, written.into_iter());
        // A displayed formula is a box of its own; Markdown hands it over within a paragraph, which may not hold one.
        let html = html
            .replace("<p><div class=\"formula\"", "<div class=\"formula\"")
            .replace("</math></div></p>", "</math></div>");
        classes.replace(&html).with_context(|| format!("guide/{}", chapter.file))
    }
}

struct Heading {
    level: usize,
    text: String,
    start: usize,
}

struct Fence {
    word: &'static str,
    info: String,
    body: String,
}

impl Fence {
    /// The fence when its first word is one that the builder expands.
    fn of(info: &CowStr) -> Option<Self> {
        let (first, rest) = info.split_once(' ').unwrap_or((info, ""));
        let word = ["worksheet", "made"].into_iter().find(|word| *word == first)?;
        Some(Self { word, info: rest.to_string(), body: String::new() })
    }

    fn expand(&self, kept: &Kept) -> anyhow::Result<String> {
        kept.of(&[self.word, &self.info, &self.body], || match self.word {
            "worksheet" => worksheet::element(&self.info, &self.body),
            _ => worksheet::made(&self.info, &self.body),
        })
    }
}

fn raw(html: String) -> Event<'static> {
    Event::Html(html.into())
}

fn inline(html: String) -> Event<'static> {
    Event::InlineHtml(html.into())
}

#[cfg(test)]
mod tests {
    use super::Expander;
    use crate::{
        chapter::Chapter,
        formula::Typesetter,
        kept::Kept,
        link::{Links, Shape},
        style_attribute::StyleClasses,
    };

    fn expand(text: &str) -> anyhow::Result<String> {
        let chapter = Chapter::read("01-demand.md", &format!("---\ntitle: Demand\n---\n{text}"))?;
        let links = Links { shape: Shape::Folder, pages: ["demand", "anchors"].map(String::from).into() };
        let typesetter = Typesetter::new()?;
        Expander { typesetter: &typesetter, links: &links, kept: &Kept::for_once() }
            .expand(&chapter, &mut StyleClasses::default())
    }

    #[test]
    fn a_formula_becomes_mathml_without_style_attributes() {
        let html = expand("So $F_p = 0.4 a_p$ and\n\n$$\\begin{cases} a & b \\\\ c & d \\end{cases}$$\n").unwrap();
        assert!(html.contains("<p>So <math>"), "{html}");
        assert!(html.contains("<div class=\"formula\""), "{html}");
        assert!(!html.contains("<p><div"), "{html}");
        assert!(!html.contains(" style="), "{html}");
    }

    #[test]
    fn an_unknown_command_names_the_line() {
        let fault = format!("{:#}", expand("a\n\n$\\nosuchcommand$").unwrap_err());
        assert!(fault.contains("guide/01-demand.md, line 6"), "{fault}");
    }

    #[test]
    fn a_worksheet_stands_outside_paragraphs() {
        let html = expand("a\n\n```worksheet demand\n{\"title\": \"Push\"}\n```\n\nb\n").unwrap();
        assert!(html.contains("<p>a</p>\n<steadfoot-worksheet kind=\"demand\""), "{html}");
        assert!(html.contains("</steadfoot-worksheet>\n<p>b</p>"), "{html}");
    }

    #[test]
    fn headings_carry_ids_of_their_page_and_level_one_is_refused() {
        assert!(
            expand("## How *hard* is it?\n")
                .unwrap()
                .contains("<h2 id=\"demand--how-hard-is-it\">How <em>hard</em> is it?</h2>")
        );
        assert!(expand("# Title\n").is_err());
    }

    #[test]
    fn table_alignment_is_a_class() {
        let html = expand("| a | b |\n|---|--:|\n| c | 1 |\n").unwrap();
        assert!(html.contains("<td class=\"as-text-align-right\">1</td>"), "{html}");
    }

    #[test]
    fn links_and_pictures_are_looked_at() {
        assert!(expand("[bolts](anchors.md)").unwrap().contains("href=\"anchors.html\""));
        assert!(expand("[bolts](moon.md)").is_err());
        assert!(expand("![a](a.png)").is_err());
    }
}
