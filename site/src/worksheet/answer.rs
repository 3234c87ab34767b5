//! The answer in sentences, worked out when the guide was made.

use steadfoot::calc::System;
use steadfoot::report::answer::Topic;
use steadfoot::report::outcome::{Report, Verdict};
use steadfoot::report::print_sentence;

use super::words::sentence_case;
use crate::document::escaped;

/// The answer as a section; `topics` are those that are told.
pub fn answer(report: &Report, topics: &[Topic]) -> String {
    let verdict = match report.verdict {
        Verdict::Holds => "holds",
        Verdict::DoesNotHold => "does_not_hold",
        Verdict::CannotBeSaid => "cannot_be_said",
    };
    // Sentences of one topic in a row make one paragraph.
    let mut paragraphs: Vec<(Topic, String)> = Vec::new();
    // That something is not known is told wherever an answer is, and where none is: the rest stands for one way only.
    let is_told = |topic: Topic| topic == Topic::Unknown || topics.contains(&topic);
    for sentence in report.answer.iter().filter(|sentence| is_told(sentence.topic)) {
        let text = print_sentence(sentence, System::Si);
        match paragraphs.last_mut() {
            Some((topic, words)) if *topic == sentence.topic => *words = format!("{words} {text}"),
            _ => paragraphs.push((sentence.topic, text)),
        }
    }
    let mut html = format!("<section class=\"answer\" aria-label=\"The answer\" data-answer=\"{verdict}\">\n");
    for (place, (topic, text)) in paragraphs.iter().enumerate() {
        let text = if place == 0 { sentence_case(text) } else { text.clone() };
        html += &format!("<p data-topic=\"{}\">{}</p>\n", topic_word(*topic), escaped(&text));
    }
    html + "</section>\n"
}

/// All sentences of the answer in one.
pub fn whole(report: &Report) -> String {
    let sentences: Vec<String> = report.answer.iter().map(|sentence| print_sentence(sentence, System::Si)).collect();
    sentence_case(&sentences.join(" "))
}

fn topic_word(topic: Topic) -> &'static str {
    match topic {
        Topic::Unknown => "unknown",
        Topic::Bolted => "bolted",
        Topic::Free => "free",
        Topic::Uncovered => "uncovered",
        Topic::Governs => "governs",
    }
}
