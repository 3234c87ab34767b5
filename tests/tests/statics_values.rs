//! The check values of base reactions, from `values/statics`. Each expected number is the text that its source prints;
//! it is met when the result differs by no more than half of the last printed digit.

use steadfoot_tests::statics;

#[test]
fn base_reactions_give_every_check_value() {
    let mut compared = 0;
    let mut wrong = Vec::new();
    for source in statics::sources().unwrap() {
        assert!(["published", "secondary", "memory", "derived"].contains(&source.trust.as_str()), "{}", source.trust);
        for value in &source.values {
            compared += 1;
            if !value.compared.is_met() {
                wrong.push(format!("{}, {}: {} {:?}", source.block, value.case, value.name, value.compared));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(compared > 200, "only {compared} values were compared");
}

#[test]
fn another_way_through_the_same_statics_finds_nothing_else() {
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/values/statics/derive.py");
    let output = std::process::Command::new("python3").arg(script).output().expect("python3 works the values out");
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let [all] = said.lines().collect::<Vec<_>>()[..] else { panic!("{said}") };
    let count = all.split_once(' ').and_then(|(count, _)| count.parse().ok()).unwrap_or(0);
    assert!(count > 200, "{said}");
}
