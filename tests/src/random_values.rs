//! Random inputs made from the tables of fields, valid by the rule's own word.

use steadfoot::input::{Absent, Field, FieldShape, Problem, Value, Values};

use crate::random::Random;

/// Faults of fields together, as rules tell them.
pub type Faults = Vec<(usize, Problem, &'static str)>;

/// Values of all fields that the rule finds no fault with.
///
/// Fields that are missing are drawn, those that exclude each other are left out, and anything else is drawn anew.
pub fn valid_values(random: &mut Random, fields: &[Field], faults: fn(&Values, &mut Faults)) -> Values {
    let mut values = Values(fields.iter().map(|field| drawn_or_absent(random, field)).collect());
    for _ in 0..1000 {
        let mut found = Faults::new();
        faults(&values, &mut found);
        let Some(&(place, problem, _)) = found.first() else { return values };
        values.0[place] = match problem {
            Problem::Missing | Problem::NeedsOneOf => drawn(random, &fields[place].shape),
            Problem::Excludes => Value::Unknown,
            // A rule that counts storeys asks for whole numbers.
            Problem::NotInRule => whole(drawn(random, &fields[place].shape)),
            _ => drawn_or_absent(random, &fields[place]),
        };
    }
    panic!("no valid values found for the fields beginning with {}", fields[0].key);
}

fn drawn_or_absent(random: &mut Random, field: &Field) -> Value {
    let is_drawn = random.percent(70);
    match field.absent {
        Absent::Unknown if !random.percent(50) => Value::Unknown,
        Absent::Is(number) if !is_drawn => Value::Number(number),
        Absent::Are(number) if !is_drawn => Value::Numbers([number; 3]),
        Absent::Word(place) if !is_drawn => Value::Choice(place),
        Absent::Set(flag) if !is_drawn => Value::Flag(flag),
        _ => drawn(random, &field.shape),
    }
}

fn whole(value: Value) -> Value {
    if let Value::Number(number) = value { Value::Number(number.round()) } else { value }
}

/// A value of this shape.
pub fn drawn(random: &mut Random, shape: &FieldShape) -> Value {
    match *shape {
        FieldShape::Number { min, max, .. } => Value::Number(number(random, min, max)),
        FieldShape::Numbers { count, min, max, .. } => {
            let mut numbers = [0.0; 3];
            numbers[..count].fill_with(|| number(random, min, max));
            Value::Numbers(numbers)
        }
        FieldShape::Choice(words) => Value::Choice(random.below(words.len())),
        FieldShape::Flag => Value::Flag(random.percent(50)),
        FieldShape::Text | FieldShape::Name => Value::Text("a".into()),
        FieldShape::NamesOfContents | FieldShape::NumbersOfContents { .. } => Value::Unknown,
    }
}

/// Mostly inside the limits, often on them, often 0 or 1.
fn number(random: &mut Random, min: f64, max: f64) -> f64 {
    let inside = |number: f64| (min..=max).contains(&number);
    match random.below(10) {
        0 => min,
        1 => max,
        2 if inside(0.0) => 0.0,
        3 if inside(1.0) => 1.0,
        _ if min > 0.0 && max / min > 100.0 => random.decades(min, max),
        _ => random.between(min, max),
    }
}
