//! Plain values as bytes, which `values.js` turns into JavaScript values on the other side.
//!
//! One block of bytes a call weighs and costs far less than one call across the boundary for every key and number. Every
//! value is a tag and what belongs to it; a key is written out where it first stands, and later as its number.

use alloc::vec::Vec;
use core::fmt::{self, Display, Formatter};

use serde::Serialize;
use serde::ser::{self, Serializer};

/// What follows in the bytes.
#[repr(u8)]
enum Tag {
    Null,
    False,
    True,
    /// Eight bytes, the least first.
    Number,
    /// The number of bytes in four bytes, the least first, and the bytes.
    Text,
    /// Values up to the end.
    List,
    /// Keys with their values up to the end.
    Object,
    /// The end of a list or an object; inside an object, where a key would stand.
    End,
    /// A key that is new: a text.
    NewKey,
    /// A key that stood before: its place among the new keys in one byte.
    OldKey,
}

/// The bytes of a value.
pub fn bytes_of<T: Serialize>(value: &T) -> Vec<u8> {
    let mut writer = Writer { bytes: Vec::new(), keys: Vec::new() };
    let Ok(()) = value.serialize(&mut writer);
    writer.bytes
}

struct Writer {
    bytes: Vec<u8>,
    /// Keys are constants, so that one key stands at one address.
    keys: Vec<(*const u8, usize)>,
}

// Each of these stands once in the module instead of in every place that writes a value.
impl Writer {
    #[inline(never)]
    fn tag(&mut self, tag: Tag) {
        self.bytes.push(tag as u8);
    }

    #[inline(never)]
    fn number(&mut self, number: f64) {
        self.tag(Tag::Number);
        self.bytes.extend_from_slice(&number.to_le_bytes());
    }

    #[inline(never)]
    fn text(&mut self, tag: Tag, text: &str) {
        self.tag(tag);
        self.bytes.extend_from_slice(&(text.len() as u32).to_le_bytes());
        self.bytes.extend_from_slice(text.as_bytes());
    }

    #[inline(never)]
    fn key(&mut self, key: &'static str) {
        let address = (key.as_ptr(), key.len());
        match self.keys.iter().position(|known| *known == address) {
            Some(place) => {
                self.tag(Tag::OldKey);
                self.bytes.push(place as u8);
            }
            None => {
                self.text(Tag::NewKey, key);
                if self.keys.len() < 256 {
                    self.keys.push(address);
                }
            }
        }
    }
}

/// An error that cannot be: any value can be written.
#[derive(Debug)]
enum Never {}

impl Display for Never {
    fn fmt(&self, _: &mut Formatter) -> fmt::Result {
        Ok(())
    }
}

impl core::error::Error for Never {}

impl ser::Error for Never {
    fn custom<T: Display>(_: T) -> Never {
        panic!("a value that cannot be written")
    }
}

macro_rules! numbers {
    ($($function:ident $number:ty;)*) => {$(
        fn $function(self, number: $number) -> Result<(), Never> {
            self.number(number as f64);
            Ok(())
        }
    )*};
}

impl<'w> Serializer for &'w mut Writer {
    type Ok = ();
    type Error = Never;
    type SerializeSeq = &'w mut Writer;
    type SerializeTuple = &'w mut Writer;
    type SerializeTupleStruct = &'w mut Writer;
    type SerializeTupleVariant = ser::Impossible<(), Never>;
    type SerializeMap = ser::Impossible<(), Never>;
    type SerializeStruct = &'w mut Writer;
    type SerializeStructVariant = ser::Impossible<(), Never>;

    numbers! {
        serialize_i8 i8;
        serialize_i16 i16;
        serialize_i32 i32;
        serialize_i64 i64;
        serialize_u8 u8;
        serialize_u16 u16;
        serialize_u32 u32;
        serialize_u64 u64;
        serialize_f32 f32;
        serialize_f64 f64;
    }

    fn serialize_bool(self, flag: bool) -> Result<(), Never> {
        self.tag(if flag { Tag::True } else { Tag::False });
        Ok(())
    }

    fn serialize_char(self, character: char) -> Result<(), Never> {
        self.text(Tag::Text, character.encode_utf8(&mut [0; 4]));
        Ok(())
    }

    fn serialize_str(self, text: &str) -> Result<(), Never> {
        self.text(Tag::Text, text);
        Ok(())
    }

    fn serialize_bytes(self, bytes: &[u8]) -> Result<(), Never> {
        bytes.serialize(self)
    }

    fn serialize_none(self) -> Result<(), Never> {
        self.tag(Tag::Null);
        Ok(())
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), Never> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<(), Never> {
        self.serialize_none()
    }

    fn serialize_unit_struct(self, _: &'static str) -> Result<(), Never> {
        self.serialize_none()
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Result<(), Never> {
        self.serialize_str(variant)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Result<(), Never> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Result<(), Never> {
        self.tag(Tag::Object);
        self.key(variant);
        value.serialize(&mut *self)?;
        self.tag(Tag::End);
        Ok(())
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<&'w mut Writer, Never> {
        self.tag(Tag::List);
        Ok(self)
    }

    fn serialize_tuple(self, _: usize) -> Result<&'w mut Writer, Never> {
        self.serialize_seq(None)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<&'w mut Writer, Never> {
        self.serialize_seq(None)
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<&'w mut Writer, Never> {
        self.tag(Tag::Object);
        Ok(self)
    }

    // Nothing that the engine tells has these shapes.
    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeTupleVariant, Never> {
        unimplemented!()
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Self::SerializeMap, Never> {
        unimplemented!()
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeStructVariant, Never> {
        unimplemented!()
    }

    fn collect_str<T: Display + ?Sized>(self, _: &T) -> Result<(), Never> {
        unimplemented!()
    }
}

impl ser::SerializeSeq for &mut Writer {
    type Ok = ();
    type Error = Never;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        value.serialize(&mut **self)
    }

    fn end(self) -> Result<(), Never> {
        self.tag(Tag::End);
        Ok(())
    }
}

impl ser::SerializeTuple for &mut Writer {
    type Ok = ();
    type Error = Never;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        value.serialize(&mut **self)
    }

    fn end(self) -> Result<(), Never> {
        self.tag(Tag::End);
        Ok(())
    }
}

impl ser::SerializeTupleStruct for &mut Writer {
    type Ok = ();
    type Error = Never;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        value.serialize(&mut **self)
    }

    fn end(self) -> Result<(), Never> {
        self.tag(Tag::End);
        Ok(())
    }
}

impl ser::SerializeStruct for &mut Writer {
    type Ok = ();
    type Error = Never;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, key: &'static str, value: &T) -> Result<(), Never> {
        self.key(key);
        value.serialize(&mut **self)
    }

    fn end(self) -> Result<(), Never> {
        self.tag(Tag::End);
        Ok(())
    }
}
