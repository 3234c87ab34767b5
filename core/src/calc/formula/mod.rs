//! The grammar of formula texts: reading, evaluating, typesetting. Only native code uses it.
//!
//! Grammar: `+ - * / ^`, parentheses, numbers, names as printed (`f'_c`, `psi_ed_N`), `sqrt`, `abs`, `sin`, `cos`,
//! `tan`, `min`, `max`, `sum` over indexed names (`sum(T_i * x_i)`), and `if(a >= b, x, y)`.

mod evaluate;
mod read;
mod typeset;

pub use evaluate::{Quantity, Symbols, evaluate, evaluate_at};
pub use read::{Compare, Expression, FormulaError, Function, numerals, read};
pub use typeset::{Typeset, symbol_mathml, typeset};
