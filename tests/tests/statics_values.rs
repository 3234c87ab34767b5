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
