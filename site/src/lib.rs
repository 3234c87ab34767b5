//! Makes the design guide: the engine built for the browser, the chapters, the page's code and style, and out of them
//! the folder site and the one-file page.

pub mod arguments;
pub mod build;
pub mod chapter;
pub mod check_value;
pub mod dist;
pub mod document;
pub mod embed;
pub mod engine;
pub mod folder;
pub mod font;
pub mod formula;
pub mod guide;
pub mod halves;
pub mod kept;
pub mod link;
pub mod markdown;
pub mod notice;
pub mod one_file;
pub mod pack;
pub mod parts;
pub mod policy;
pub mod product;
pub mod script;
pub mod server;
pub mod shorten;
pub mod size;
pub mod squeeze;
pub mod style_attribute;
pub mod svg;
pub mod texts;
pub mod whole_file;
pub mod worksheet;
pub mod workspace;
