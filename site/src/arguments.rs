//! What the command line may say.

use anyhow::{Context, bail};

/// What the command line asks for.
#[derive(Debug, PartialEq)]
pub struct Arguments {
    /// Serve the folder after building it.
    pub serve: bool,
    /// Print the size of every part beside its budget.
    pub sizes: bool,
    /// The first port that is tried.
    pub port: u16,
}

impl Arguments {
    pub const HELP: &str = "\
Builds the guide under site/dist and serves it on a loopback address.

  cargo run -p steadfoot-site                 build and serve
  cargo run -p steadfoot-site -- --no-serve   build only
  cargo run -p steadfoot-site -- --sizes      build, print the size of every part, serve
  cargo run -p steadfoot-site -- --port 9000  try this port first (8177 if not given)
";

    /// Reads the arguments behind the program's name; `None` means that help was asked for.
    pub fn read(words: impl Iterator<Item = String>) -> anyhow::Result<Option<Self>> {
        let mut arguments = Self { serve: true, sizes: false, port: 8177 };
        let mut words = words;
        while let Some(word) = words.next() {
            match word.as_str() {
                "--no-serve" => arguments.serve = false,
                "--sizes" => arguments.sizes = true,
                "--port" => {
                    let port = words.next().context("--port needs a number behind it")?;
                    arguments.port = port
                        .parse()
                        .with_context(|| format!("--port needs a number from 1 to 65535, not \"{port}\""))?;
                }
                "--help" | "-h" => return Ok(None),
                other => bail!("\"{other}\" is not known; --help lists what is"),
            }
        }
        Ok(Some(arguments))
    }
}

#[cfg(test)]
mod tests {
    use super::Arguments;

    fn read(line: &str) -> anyhow::Result<Option<Arguments>> {
        Arguments::read(line.split_whitespace().map(String::from))
    }

    #[test]
    fn no_words_mean_build_and_serve() {
        assert_eq!(read("").unwrap(), Some(Arguments { serve: true, sizes: false, port: 8177 }));
    }

    #[test]
    fn every_flag_is_understood() {
        let expected = Arguments { serve: false, sizes: true, port: 9000 };
        assert_eq!(read("--no-serve --sizes --port 9000").unwrap(), Some(expected));
        assert_eq!(read("--help").unwrap(), None);
    }

    #[test]
    fn a_wrong_word_is_named() {
        assert!(read("--serve-not").unwrap_err().to_string().contains("--serve-not"));
        assert!(read("--port").is_err());
        assert!(read("--port 99999").is_err());
    }
}
