//! Whether the cut font draws every character of a formula.

use std::collections::BTreeSet;

use super::characters;

/// The characters within formulas that the cut font lacks, in the form in which a browser asks for them.
///
/// Plain words within a formula are left out: their letters may come from the reader's own fonts.
pub fn missing(markup: &str) -> BTreeSet<char> {
    let drawn = characters::all();
    let mut asked = BTreeSet::new();
    for formula in markup.split("<math").skip(1) {
        let formula = formula.split("</math>").next().unwrap_or("");
        for element in formula.split('<').skip(1) {
            let Some((tag, text)) = element.split_once('>') else {
                continue;
            };
            let name = tag.split([' ', '/']).next().unwrap_or("");
            if ["mi", "mn", "mo"].contains(&name) {
                let text = unescaped(text.trim());
                let mut characters = text.chars();
                match (characters.next(), characters.next()) {
                    (Some(only), None) if name == "mi" && !tag.contains("normal") => {
                        asked.insert(italic(only));
                    }
                    _ => asked.extend(text.chars()),
                }
            }
        }
    }
    asked.difference(&drawn).copied().collect()
}

fn unescaped(text: &str) -> String {
    text.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&")
}

/// The italic form that a lone letter takes (MathML Core, section 3.2.2 "The mi element", and its table of mappings).
fn italic(letter: char) -> char {
    let shifted = |first: char, italic_first: u32| char::from_u32(italic_first + u32::from(letter) - u32::from(first));
    let form = match letter {
        'h' => Some('ℎ'),
        'A'..='Z' => shifted('A', 0x1d434),
        'a'..='z' => shifted('a', 0x1d44e),
        'Α'..='Ω' => shifted('Α', 0x1d6e2),
        'α'..='ω' => shifted('α', 0x1d6fc),
        '∇' => Some('\u{1d6fb}'),
        '∂' => Some('\u{1d715}'),
        'ϵ' => Some('\u{1d716}'),
        'ϑ' => Some('\u{1d717}'),
        'ϰ' => Some('\u{1d718}'),
        'ϕ' => Some('\u{1d719}'),
        'ϱ' => Some('\u{1d71a}'),
        'ϖ' => Some('\u{1d71b}'),
        _ => None,
    };
    form.unwrap_or(letter)
}

#[cfg(test)]
mod tests {
    use super::missing;

    #[test]
    fn what_formulas_use_is_drawn() {
        let markup =
            "<math><mi>φ</mi><mi>h</mi><mi>cbg</mi><mo>&lt;</mo><mn>0.75</mn><mi mathvariant=\"normal\">Δ</mi></math>";
        assert!(missing(markup).is_empty(), "{:?}", missing(markup));
    }

    #[test]
    fn what_is_not_drawn_is_named() {
        let markup = "𝐚 is text <math><mi>𝐚</mi><mo>⟦</mo><mtext>ж</mtext></math>";
        assert_eq!(missing(markup).into_iter().collect::<String>(), "⟦𝐚");
    }
}
