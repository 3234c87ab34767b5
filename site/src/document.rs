//! The frame around the chapters: head, navigation, notices, cautions.

use anyhow::ensure;
use pulldown_cmark_escape::escape_html;
use steadfoot::report::cautions::CAUTIONS;

use crate::{
    chapter::{Chapter, Place},
    guide::Guide,
    link::{Links, Shape},
    notice,
};

/// What differs from document to document.
pub struct Document<'a> {
    /// The text of the window's title.
    pub title: &'a str,
    /// The page that the navigation marks as the present one, if it is one.
    pub present: Option<&'a str>,
    /// The content security policy.
    pub policy: &'a str,
    /// Style and script within the head.
    pub head: &'a str,
    /// All articles.
    pub articles: &'a str,
    /// What stands behind everything else.
    pub tail: &'a str,
}

impl Document<'_> {
    /// The whole document.
    pub fn html(&self, guide: &Guide, links: &Links) -> anyhow::Result<String> {
        let title = escaped(self.title);
        let shape = match links.shape {
            Shape::Folder => "folder",
            Shape::OneFile => "one-file",
        };
        let cautions: String =
            CAUTIONS.iter().map(|caution| format!("<p class=\"caution\">{}</p>\n", escaped(caution))).collect();
        let html = format!(
            "<!doctype html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n\
             <meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">\n\
             <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
             <meta name=\"color-scheme\" content=\"light dark\">\n\
             <title>{title}</title>\n<link rel=\"icon\" href=\"data:,\">\n{head}\
             <noscript><style>{no_script}</style></noscript>\n</head>\n\
             <body data-shape=\"{shape}\">\n\
             <a class=\"skip\" href=\"#content\">To the content</a>\n\
             <header id=\"top\">\n<a class=\"brand\" href=\"{landing}\">Steadfoot</a>\n{navigation}\
             <div id=\"switches\"></div>\n</header>\n{notices}\
             <main id=\"content\" tabindex=\"-1\">\n{articles}</main>\n\
             <footer id=\"cautions\">\n{cautions}</footer>\n{tail}</body>\n</html>\n",
            policy = self.policy,
            head = self.head,
            no_script = notice::NO_SCRIPT_STYLE,
            landing = links.page(&guide.landing().name),
            navigation = navigation(guide, links, self.present),
            notices = notice::html(links.shape),
            articles = self.articles,
            tail = self.tail,
        );
        look_for_what_the_policy_drops(&html)?;
        Ok(html)
    }
}

/// One page as an article.
pub fn article(chapter: &Chapter, text: &str, guide: &Guide, links: &Links) -> String {
    let place = match chapter.place {
        Place::Landing => "landing",
        Place::Chapter => "chapter",
        Place::Check => "check",
        Place::Apart => "apart",
    };
    let part = chapter.part.as_ref().map(|part| format!(" data-part=\"{}\"", escaped(part))).unwrap_or_default();
    let question = chapter
        .question
        .as_ref()
        .map(|question| format!("<p class=\"question\">{}</p>\n", escaped(question)))
        .unwrap_or_default();
    format!(
        "<article id=\"{name}\" class=\"leaf {place}\"{part} aria-labelledby=\"{name}--title\">\n\
         <h1 id=\"{name}--title\">{title}</h1>\n{question}{text}{onward}</article>\n",
        name = chapter.name,
        title = escaped(&chapter.title),
        onward = onward(chapter, guide, links),
    )
}

fn navigation(guide: &Guide, links: &Links, present: Option<&str>) -> String {
    let item = |chapter: &Chapter| {
        let mark = if present == Some(chapter.name.as_str()) { " aria-current=\"page\"" } else { "" };
        format!("<li><a href=\"{}\"{mark}>{}</a></li>\n", links.page(&chapter.name), escaped(&chapter.short))
    };
    let row: String = guide.at(Place::Chapter).map(item).collect();
    let check: String = guide.at(Place::Check).map(item).collect();
    let apart: String = guide.at(Place::Apart).map(item).collect();
    format!(
        "<nav id=\"pages\" aria-label=\"Pages\">\n<ul>\n{check}\
         <li><details class=\"chapters\"><summary>Guide</summary>\n<ol>\n{row}</ol></details></li>\n{apart}</ul>\n</nav>\n"
    )
}

fn onward(chapter: &Chapter, guide: &Guide, links: &Links) -> String {
    if chapter.place != Place::Chapter {
        return String::new();
    }
    let (before, behind) = guide.neighbours(chapter);
    let check = guide.at(Place::Check).next();
    let link = |to: Option<&Chapter>, class: &str| {
        to.map(|to| format!("<a class=\"{class}\" href=\"{}\">{}</a>\n", links.page(&to.name), escaped(&to.title)))
            .unwrap_or_default()
    };
    format!(
        "<nav class=\"onward\" aria-label=\"Onward\">\n{}{}</nav>\n",
        link(before, "before"),
        link(behind.or(check), "behind")
    )
}

/// Text as it may stand between tags and within quoted attributes.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    escape_html(&mut out, text).expect("a string takes every text");
    out
}

fn look_for_what_the_policy_drops(html: &str) -> anyhow::Result<()> {
    // Scripts and styles are spelled out by the builder itself; everything else is markup, where these are dropped.
    let mut rest = html;
    let mut markup = String::new();
    while let Some(start) = ["<script>", "<style>"].iter().filter_map(|open| rest.find(open)).min() {
        markup.push_str(&rest[..start]);
        let close = if rest[start..].starts_with("<script>") { "</script>" } else { "</style>" };
        let Some(length) = rest[start..].find(close) else {
            break;
        };
        rest = &rest[start + length..];
    }
    markup.push_str(rest);
    for (forbidden, why) in [
        (" style=", "the security policy drops style attributes"),
        ("javascript:", "the security policy drops such links"),
        ("http://", "nothing leads to an unprotected address"),
    ] {
        if let Some(at) = markup.find(forbidden) {
            let near: String = markup[at..].chars().take(80).collect();
            ensure!(false, "{why}: {near}");
        }
    }
    let handler = markup.match_indices(" on").find(|(at, _)| {
        let behind = &markup[at + 3..];
        let word = behind.len() - behind.trim_start_matches(|c: char| c.is_ascii_lowercase()).len();
        let in_tag = markup[..*at].rfind('<') > markup[..*at].rfind('>');
        word > 0 && behind[word..].starts_with("=\"") && in_tag
    });
    if let Some((at, _)) = handler {
        let near: String = markup[at..].chars().take(80).collect();
        ensure!(false, "the security policy drops event attributes: {near}");
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::look_for_what_the_policy_drops;

    #[test]
    fn what_the_policy_drops_is_refused_in_markup_only() {
        assert!(look_for_what_the_policy_drops("<p style=\"a:b\">").is_err());
        assert!(look_for_what_the_policy_drops("<p onclick=\"a()\">").is_err());
        assert!(look_for_what_the_policy_drops("<a href=\"javascript:a()\">").is_err());
        assert!(look_for_what_the_policy_drops("<p>it goes on=\"a\"</p>").is_ok());
        assert!(look_for_what_the_policy_drops("<script>a=' style='</script><p>b</p><style>a{}</style>").is_ok());
        assert!(look_for_what_the_policy_drops("<script>a</script><p style=\"a:b\">").is_err());
    }
}
