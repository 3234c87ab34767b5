//! Code and style without their comments and indentation.
//!
//! Names stay and lines stay, so what a browser's console reports is still readable and no rule about semicolons can
//! be broken. The scanner only has to know where text, patterns and comments begin and end.

use anyhow::{Context, bail};

/// A script without comments, indentation and empty lines.
pub fn script(source: &str) -> anyhow::Result<String> {
    let mut scanner = Scanner { source, at: 0, out: String::with_capacity(source.len()) };
    scanner.script()?;
    Ok(scanner.finished())
}

/// A stylesheet without comments, indentation and empty lines.
pub fn style(source: &str) -> anyhow::Result<String> {
    let mut scanner = Scanner { source, at: 0, out: String::with_capacity(source.len()) };
    while let Some(next) = scanner.peek() {
        match next {
            '"' | '\'' => scanner.quoted(next)?,
            '/' if scanner.ahead("/*") => scanner.block_comment()?,
            _ => scanner.plain(next),
        }
    }
    Ok(scanner.finished())
}

struct Scanner<'a> {
    source: &'a str,
    at: usize,
    out: String,
}

impl Scanner<'_> {
    fn script(&mut self) -> anyhow::Result<()> {
        // For every template text that is open: how many braces are open within its inserted expression.
        let mut templates: Vec<usize> = Vec::new();
        while let Some(next) = self.peek() {
            match next {
                '"' | '\'' => self.quoted(next)?,
                '`' => {
                    self.plain(next);
                    if self.template_text()? {
                        templates.push(0);
                    }
                }
                '{' => {
                    if let Some(depth) = templates.last_mut() {
                        *depth += 1;
                    }
                    self.plain(next);
                }
                '}' => {
                    self.plain(next);
                    // A brace that closes the inserted expression leads back into the text around it.
                    let ends = templates.last() == Some(&0);
                    if ends && !self.template_text()? {
                        templates.pop();
                    } else if let Some(depth) = templates.last_mut().filter(|_| !ends) {
                        *depth -= 1;
                    }
                }
                '/' if self.ahead("//") => self.line_comment(),
                '/' if self.ahead("/*") => self.block_comment()?,
                '/' if self.pattern_may_begin() => self.pattern()?,
                _ => self.plain(next),
            }
        }
        if !templates.is_empty() {
            bail!("a template text does not end");
        }
        Ok(())
    }

    fn peek(&self) -> Option<char> {
        self.source[self.at..].chars().next()
    }

    fn ahead(&self, text: &str) -> bool {
        self.source[self.at..].starts_with(text)
    }

    fn line(&self) -> usize {
        self.source[..self.at].matches('\n').count() + 1
    }

    /// One character of code; white space at the ends of lines goes.
    fn plain(&mut self, character: char) {
        self.at += character.len_utf8();
        match character {
            '\r' => {}
            '\n' => self.end_line(),
            ' ' | '\t' if self.out.is_empty() || self.out.ends_with('\n') => {}
            other => self.out.push(other),
        }
    }

    fn end_line(&mut self) {
        let kept = self.out.trim_end_matches([' ', '\t']).len();
        self.out.truncate(kept);
        if !self.out.is_empty() && !self.out.ends_with('\n') {
            self.out.push('\n');
        }
    }

    /// Copies up to and including the character at this many bytes from here.
    fn verbatim(&mut self, bytes: usize) {
        self.out.push_str(&self.source[self.at..self.at + bytes]);
        self.at += bytes;
    }

    fn quoted(&mut self, quote: char) -> anyhow::Result<()> {
        let mut escaped = false;
        for (index, character) in self.source[self.at..].char_indices().skip(1) {
            match character {
                _ if escaped => escaped = false,
                '\\' => escaped = true,
                '\n' => break,
                end if end == quote => {
                    self.verbatim(index + 1);
                    return Ok(());
                }
                _ => {}
            }
        }
        bail!("line {}: a text in {quote} does not end on its line", self.line())
    }

    /// Copies template text; true when an inserted expression begins, false when the text ends.
    fn template_text(&mut self) -> anyhow::Result<bool> {
        let mut escaped = false;
        let mut dollar = false;
        for (index, character) in self.source[self.at..].char_indices() {
            match character {
                _ if escaped => escaped = false,
                '\\' => escaped = true,
                '`' => {
                    self.verbatim(index + 1);
                    return Ok(false);
                }
                '{' if dollar => {
                    self.verbatim(index + 1);
                    return Ok(true);
                }
                _ => {}
            }
            dollar = character == '$' && !dollar && !escaped;
        }
        bail!("line {}: a template text does not end", self.line())
    }

    fn line_comment(&mut self) {
        let rest = &self.source[self.at..];
        self.at += rest.find('\n').unwrap_or(rest.len());
    }

    fn block_comment(&mut self) -> anyhow::Result<()> {
        let length = self.source[self.at..]
            .find("*/")
            .with_context(|| format!("line {}: a comment does not end", self.line()))?;
        let comment = &self.source[self.at..self.at + length];
        self.at += length + 2;
        // A comment over several lines ends the line as far as semicolons are concerned.
        if comment.contains('\n') {
            self.end_line();
        } else if !self.out.ends_with('\n') {
            self.out.push(' ');
        }
        Ok(())
    }

    fn pattern(&mut self) -> anyhow::Result<()> {
        let (mut escaped, mut in_class) = (false, false);
        for (index, character) in self.source[self.at..].char_indices().skip(1) {
            match character {
                '\n' => break,
                _ if escaped => escaped = false,
                '\\' => escaped = true,
                '[' => in_class = true,
                ']' => in_class = false,
                '/' if !in_class => {
                    self.verbatim(index + 1);
                    return Ok(());
                }
                _ => {}
            }
        }
        bail!("line {}: a pattern does not end; if this / divides, put brackets before it", self.line())
    }

    /// A stroke divides behind a value and opens a pattern behind anything else.
    fn pattern_may_begin(&self) -> bool {
        let before = self.out.trim_end();
        let Some(last) = before.chars().next_back() else {
            return true;
        };
        if last.is_alphanumeric() || last == '_' || last == '$' {
            let word = before.rsplit(|c: char| !(c.is_alphanumeric() || c == '_' || c == '$')).next().unwrap_or("");
            return ["return", "typeof", "case", "in", "of", "void", "delete", "throw", "await", "yield", "else", "do"]
                .contains(&word);
        }
        !matches!(last, ')' | ']' | '}' | '"' | '\'' | '`' | '.')
    }

    fn finished(mut self) -> String {
        self.end_line();
        self.out
    }
}

#[cfg(test)]
mod tests {
    use super::{script, style};

    #[test]
    fn comments_and_indentation_go_and_lines_stay() {
        let source = "// a\nfunction f(a) {\n  /* b */ return a; // c\n\n}\n/* d\n e */ f(1)\n";
        assert_eq!(script(source).unwrap(), "function f(a) {\nreturn a;\n}\nf(1)\n");
    }

    #[test]
    fn what_looks_like_a_comment_within_text_stays() {
        for source in [
            "const a = \"// no\" + '/* no */';\n",
            "const a = `// no\n   ${ b ? `/* ${c} */` : { d: 1 }.d } // no`;\n",
            "const a = b.replace(/\\/\\/[/*]/g, '//');\n",
            "const a = `\\`// no`;\n",
            "const a = `$${b}// no`;\n",
            "return /[/]/.test(a) ? a / b / c : (a) / b;\n",
        ] {
            assert_eq!(script(source).unwrap(), source);
        }
    }

    #[test]
    fn a_division_is_no_pattern() {
        assert_eq!(script("const a = b / 2; // half\n").unwrap(), "const a = b / 2;\n");
        assert_eq!(script("const a = f(b) / 2; // half / of it\n").unwrap(), "const a = f(b) / 2;\n");
        assert_eq!(script("const a = b[1] / 2; /* x */\n").unwrap(), "const a = b[1] / 2;\n");
    }

    #[test]
    fn what_does_not_end_is_a_fault_with_its_line() {
        for source in ["a\n\"b\n", "a\n`b\n", "a\n/* b\n", "a\n= /b\n"] {
            assert!(format!("{:#}", script(source).unwrap_err()).contains("line 2"), "{source}");
        }
    }

    #[test]
    fn a_style_loses_comments_only() {
        let source = "/* a */\n.b {\n  content: \"/* no */\";\n  color: red; /* c */\n}\n";
        assert_eq!(style(source).unwrap(), ".b {\ncontent: \"/* no */\";\ncolor: red;\n}\n");
    }
}
