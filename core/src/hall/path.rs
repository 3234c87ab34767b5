//! Paths into a project: `slab.thickness_mm`, `cabinet.feet[2].size_mm[0]`, `contents[*].mass_kg`, `contents[clock].mass_kg`.

use alloc::string::String;
use alloc::vec::Vec;

use super::tree::Tree;

/// One step of a path.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Step {
    /// Into the value of a key.
    Key(String),
    /// Into an item of a list, counted from 0.
    Item(usize),
    /// Into every item of a list.
    Every,
    /// Into the item of a list that has this name.
    Named(String),
}

/// The steps of a path; `None` where it is none.
pub fn steps(path: &str) -> Option<Vec<Step>> {
    let mut steps = Vec::new();
    let mut rest = path;
    loop {
        let end = rest.find(['.', '[']).unwrap_or(rest.len());
        let (key, behind) = rest.split_at_checked(end)?;
        if key.is_empty() || !key.bytes().all(|byte| matches!(byte, b'a'..=b'z' | b'0'..=b'9' | b'_')) {
            return None;
        }
        steps.push(Step::Key(key.into()));
        rest = behind;
        while let Some(behind) = rest.strip_prefix('[') {
            let (inner, behind) = behind.split_once(']')?;
            steps.push(match inner {
                "" => return None,
                "*" => Step::Every,
                digits if digits.len() <= 4 && digits.bytes().all(|byte| byte.is_ascii_digit()) => {
                    Step::Item(digits.bytes().fold(0, |number, digit| number * 10 + usize::from(digit - b'0')))
                }
                name => Step::Named(name.into()),
            });
            rest = behind;
        }
        match rest.strip_prefix('.') {
            Some(behind) => rest = behind,
            None => return rest.is_empty().then_some(steps),
        }
    }
}

/// Puts a value at the end of a path, objects on the way made where there are none. False where a list on the way has
/// no such item.
pub fn set(tree: &mut Tree, steps: &[Step], value: &Tree) -> bool {
    let Some((step, rest)) = steps.split_first() else {
        tree.clone_from(value);
        return true;
    };
    match (step, tree) {
        (Step::Key(key), Tree::Object(entries)) => {
            let place = entries.iter().position(|(known, _)| known == key).unwrap_or_else(|| {
                entries.push((key.clone(), Tree::empty()));
                entries.len() - 1
            });
            set(&mut entries[place].1, rest, value)
        }
        (Step::Item(place), Tree::List(items)) => items.get_mut(*place).is_some_and(|item| set(item, rest, value)),
        (Step::Every, Tree::List(items)) => items.iter_mut().all(|item| set(item, rest, value)),
        (Step::Named(name), Tree::List(items)) => {
            let named = items.iter_mut().find(|item| item.member("name").and_then(Tree::text) == Some(name));
            named.is_some_and(|item| set(item, rest, value))
        }
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_is_read_step_by_step() {
        let key = |word: &str| Step::Key(word.into());
        assert_eq!(
            steps("contents[*].size_mm[2]"),
            Some(alloc::vec![key("contents"), Step::Every, key("size_mm"), Step::Item(2)])
        );
        assert_eq!(
            steps("contents[tray 1].mass_kg"),
            Some(alloc::vec![key("contents"), Step::Named("tray 1".into()), key("mass_kg")])
        );
    }

    #[test]
    fn what_is_no_path_is_refused() {
        for path in ["", ".", "a.", ".a", "a..b", "a[", "a[]", "a[1", "a]1", "A", "a b", "a[1]b"] {
            assert_eq!(steps(path), None, "{path}");
        }
    }

    #[test]
    fn a_value_is_put_where_the_path_leads_and_nowhere_else() {
        let leaf = |text: &str| Tree::Leaf(text.into());
        let mut tree = Tree::empty();
        assert!(set(&mut tree, &steps("a.b").unwrap(), &Tree::List(alloc::vec![leaf("1"), leaf("2")])));
        assert!(set(&mut tree, &steps("a.b[1]").unwrap(), &leaf("5")));
        assert!(!set(&mut tree, &steps("a.b[2]").unwrap(), &leaf("6")));
        assert!(!set(&mut tree, &steps("a.b.c").unwrap(), &leaf("6")));
        let mut text = String::new();
        tree.write(&mut text);
        assert_eq!(text, "{\"a\": {\"b\": [1, 5]}}");
    }
}
