//! Forces that an attachment limits, in the place of those of the statics (17.10.5.3(b), (c), 17.10.6.3(a), (b)).

use super::edition::ACI_318_19;
use super::facts::Facts;
use crate::calc::{Part, Sheet, Subject, steps};

steps! { 69 "ACI 318-19, what the attachment passes";
    N_YIELDING "N_ua" Force (ACI_318_19 "17.10.5.3(b)" Secondary) "Pull on every lifted anchor, which a yielding attachment limits, in the place of the pull by the base reactions": Given;
    N_STRONG "N_ua" Force (ACI_318_19 "17.10.5.3(c)" Secondary) "Pull on every lifted anchor, the most that a non-yielding attachment passes, in the place of the pull by the base reactions": Given;
    V_LIMITED "V_ua" Force (ACI_318_19 "17.10.6.3(a), (b)" Secondary) "Shear on every sheared anchor, the most that the attachment passes, in the place of the shear by the base reactions": Given;
}

/// Tells the pull that takes the place of the statics'.
pub fn tell_tension(facts: &Facts, most: f64, sheet: &mut Sheet) {
    sheet.open(Part::Anchors, Subject::Whole, None, facts.edition.system);
    let is_yielding = facts.options.tension_word == super::chosen::OPTION_ATTACHMENT;
    sheet.step(if is_yielding { N_YIELDING } else { N_STRONG }, most);
}

/// Tells the shear that takes the place of the statics'.
pub fn tell_shear(facts: &Facts, most: f64, sheet: &mut Sheet) {
    sheet.open(Part::Anchors, Subject::Whole, None, facts.edition.system);
    sheet.step(V_LIMITED, most);
}
