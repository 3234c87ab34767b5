//! JSON text into a tree that knows where everything stands.
//!
//! An own reader, because the page pays for every byte of code and because faults need their line and column. It reads
//! RFC 8259 and nothing else; a byte order mark in front is passed over. A bare word that JSON does not know (`NaN`,
//! `01`) is kept as a word, so that the other faults of the text are found as well; anything else that is not JSON ends
//! the reading. Nothing here panics, whatever the text.

use alloc::borrow::Cow;
use alloc::string::String;
use alloc::vec::Vec;

use super::fault::Problem;
pub use super::number::number;

/// Longest text, in bytes.
pub const TEXT_MAX_BYTES: usize = 1_000_000;
/// Deepest nesting of lists and objects.
pub const DEPTH_MAX: usize = 32;
/// Most keys of one object.
pub const KEYS_MAX: usize = 1_000;

/// A value and where it stands.
#[derive(Clone, PartialEq, Debug)]
pub struct Node<'t> {
    /// Offset of its first byte.
    pub from: usize,
    /// Offset behind its last byte.
    pub to: usize,
    /// What it is.
    pub json: Json<'t>,
}

/// What can stand in a text.
#[derive(Clone, PartialEq, Debug)]
#[allow(missing_docs)]
pub enum Json<'t> {
    Null,
    Flag(bool),
    /// A number; infinite where it is beyond what a float holds.
    Number(f64),
    Text(Cow<'t, str>),
    /// A bare word that is not JSON.
    Word,
    List(Vec<Node<'t>>),
    Object(Vec<Member<'t>>),
}

/// One key of an object with its value.
#[derive(Clone, PartialEq, Debug)]
pub struct Member<'t> {
    /// The key.
    pub key: Cow<'t, str>,
    /// Offset of the key's first quote.
    pub at: usize,
    /// Whether an earlier member of the object has the same key.
    pub repeated: bool,
    /// The value.
    pub node: Node<'t>,
}

/// Why the reading ended.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Trouble {
    /// Offset of the place.
    pub at: usize,
    /// What it is.
    pub problem: Problem,
    /// What would do there.
    pub allowed: &'static str,
}

/// The trouble of a text longer than [`TEXT_MAX_BYTES`].
pub const TOO_LONG: Trouble = Trouble { at: 0, problem: Problem::TooLong, allowed: "at most 1 000 000 bytes" };

/// Reads a text.
///
/// ```
/// use steadfoot::input::text::{Json, read};
/// let node = read("{\"mass_kg\": 650}").unwrap();
/// let Json::Object(members) = node.json else { panic!() };
/// assert_eq!(members[0].node.json, Json::Number(650.0));
/// assert_eq!(read("[1, ]").unwrap_err().at, 4);
/// ```
pub fn read(text: &str) -> Result<Node<'_>, Trouble> {
    if text.len() > TEXT_MAX_BYTES {
        return Err(TOO_LONG);
    }
    let mut reader = Reader { text, at: if text.starts_with('\u{feff}') { 3 } else { 0 } };
    let node = reader.value(0)?;
    if node.json == Json::Word {
        return Err(Trouble { at: node.from, problem: Problem::NotJson, allowed: "a value" });
    }
    reader.space();
    if reader.at < text.len() {
        return Err(reader.not_json("the end of the text"));
    }
    Ok(node)
}

struct Reader<'t> {
    text: &'t str,
    at: usize,
}

impl<'t> Reader<'t> {
    fn value(&mut self, depth: usize) -> Result<Node<'t>, Trouble> {
        self.space();
        let from = self.at;
        let json = match self.byte() {
            Some(b'{' | b'[') if depth == DEPTH_MAX => {
                return Err(Trouble { at: from, problem: Problem::TooDeep, allowed: "at most 32 levels" });
            }
            Some(b'{') => self.object(depth)?,
            Some(b'[') => self.list(depth)?,
            Some(b'"') => Json::Text(self.string()?),
            _ => self.word()?,
        };
        Ok(Node { from, to: self.at, json })
    }

    fn object(&mut self, depth: usize) -> Result<Json<'t>, Trouble> {
        self.at += 1;
        let mut members: Vec<Member> = Vec::new();
        if self.next_is(b'}') {
            return Ok(Json::Object(members));
        }
        loop {
            self.space();
            let at = self.at;
            if members.len() == KEYS_MAX {
                return Err(Trouble { at, problem: Problem::TooMany, allowed: "at most 1 000 keys in one object" });
            }
            if self.byte() != Some(b'"') {
                return Err(self.not_json("a key in double quotes"));
            }
            let key = self.string()?;
            if !self.next_is(b':') {
                return Err(self.not_json("a colon behind the key"));
            }
            let node = self.value(depth + 1)?;
            let repeated = members.iter().any(|member| member.key == key);
            members.push(Member { key, at, repeated, node });
            if self.next_is(b'}') {
                return Ok(Json::Object(members));
            }
            if !self.next_is(b',') {
                return Err(self.not_json("a comma or a closing brace"));
            }
        }
    }

    fn list(&mut self, depth: usize) -> Result<Json<'t>, Trouble> {
        self.at += 1;
        let mut items = Vec::new();
        if self.next_is(b']') {
            return Ok(Json::List(items));
        }
        loop {
            items.push(self.value(depth + 1)?);
            if self.next_is(b']') {
                return Ok(Json::List(items));
            }
            if !self.next_is(b',') {
                return Err(self.not_json("a comma or a closing bracket"));
            }
        }
    }

    /// Everything up to the next mark of the grammar: a number, true, false, null, or a word that JSON does not know.
    fn word(&mut self) -> Result<Json<'t>, Trouble> {
        let from = self.at;
        while let Some(byte) = self.byte() {
            if matches!(byte, b'{' | b'}' | b'[' | b']' | b':' | b',' | b'"' | b' ' | b'\t' | b'\n' | b'\r') {
                break;
            }
            self.at += 1;
        }
        Ok(match self.since(from) {
            "" => return Err(self.not_json("a value")),
            "null" => Json::Null,
            "true" => Json::Flag(true),
            "false" => Json::Flag(false),
            word => number(word).map_or(Json::Word, Json::Number),
        })
    }

    fn string(&mut self) -> Result<Cow<'t, str>, Trouble> {
        let opening = self.at;
        self.at += 1;
        let mut from = self.at;
        let mut changed: Option<String> = None;
        loop {
            match self.byte() {
                Some(b'"') => {
                    let rest = self.since(from);
                    self.at += 1;
                    return Ok(match changed {
                        Some(text) => Cow::Owned(text + rest),
                        None => Cow::Borrowed(rest),
                    });
                }
                Some(b'\\') => {
                    let so_far = changed.get_or_insert_default();
                    so_far.push_str(self.since(from));
                    so_far.push(self.escape()?);
                    from = self.at;
                }
                Some(byte) if byte < b' ' => return Err(self.not_json("no line break or control character in a text")),
                Some(_) => self.at += 1,
                None => {
                    self.at = opening;
                    return Err(self.not_json("a text that ends with a double quote"));
                }
            }
        }
    }

    fn since(&self, from: usize) -> &'t str {
        piece(self.text, from, self.at)
    }

    fn escape(&mut self) -> Result<char, Trouble> {
        let trouble = self.not_json("one of the escapes \\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u");
        let letter = self.text.as_bytes().get(self.at + 1);
        self.at += 2;
        Ok(match letter {
            Some(b'"') => '"',
            Some(b'\\') => '\\',
            Some(b'/') => '/',
            Some(b'b') => '\u{8}',
            Some(b'f') => '\u{c}',
            Some(b'n') => '\n',
            Some(b'r') => '\r',
            Some(b't') => '\t',
            Some(b'u') => return self.code_point().ok_or(trouble),
            _ => return Err(trouble),
        })
    }

    /// The four digits behind `\u`, and the second half where they are the first half of a pair.
    fn code_point(&mut self) -> Option<char> {
        let first = self.hexadecimal()?;
        if !(0xd800..0xdc00).contains(&first) {
            return char::from_u32(first);
        }
        if !self.text.as_bytes()[self.at..].starts_with(b"\\u") {
            return None;
        }
        self.at += 2;
        let second = self.hexadecimal()?;
        if !(0xdc00..0xe000).contains(&second) {
            return None;
        }
        char::from_u32(0x1_0000 + ((first - 0xd800) << 10) + (second - 0xdc00))
    }

    fn hexadecimal(&mut self) -> Option<u32> {
        let mut code = 0;
        for &byte in self.text.as_bytes().get(self.at..self.at + 4)? {
            code = code * 16 + (byte as char).to_digit(16)?;
        }
        self.at += 4;
        Some(code)
    }

    #[inline(always)]
    fn byte(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    #[inline(always)]
    fn space(&mut self) {
        while matches!(self.byte(), Some(b' ' | b'\t' | b'\n' | b'\r')) {
            self.at += 1;
        }
    }

    fn next_is(&mut self, byte: u8) -> bool {
        self.space();
        let is = self.byte() == Some(byte);
        self.at += usize::from(is);
        is
    }

    fn not_json(&self, allowed: &'static str) -> Trouble {
        Trouble { at: self.at, problem: Problem::NotJson, allowed }
    }
}

/// A piece of a text between two places beside marks of one byte, so that it is always there.
///
/// An index would say the same, and bring the library's sentence for a broken character with all that prints it.
pub(crate) fn piece(text: &str, from: usize, to: usize) -> &str {
    text.get(from..to).unwrap_or("")
}
