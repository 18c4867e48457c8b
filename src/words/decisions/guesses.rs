//! What an owner's own answer makes of a decision or a plan.

use super::{Decisions, HUNDRED, of_hundred, people};
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::decision::{Decision, Guess, Plan};
use crate::words::overflow;

impl Decisions<'_> {
    /// What must be true for it to pay; where the owner's own answer turns that, what it says.
    pub fn verdict_by(&self, decision: &Decision, guess: Option<&Guess>) -> String {
        match guess.map(Guess::pays) {
            Some(pays) if pays != decision.verdict.can_pay() => {
                let said = if pays { say!(decide::guess_pays) } else { say!(decide::guess_pays_not) };
                said.to_string()
            }
            _ => self.verdict(decision),
        }
    }

    /// What stands under the verdict: what the owner's own answer says, then what it brings at best, or in place of
    /// that the verdict without his answer where that turns it; and how many would have to turn far.
    pub fn under_verdict(&self, decision: &Decision, guess: Option<&Guess>) -> Vec<String> {
        let turned = guess.is_some_and(|guess| guess.pays() != decision.verdict.can_pay());
        let known =
            if turned { say!(decide::guess_aside, verdict = self.verdict(decision)) } else { self.at_best(decision) };
        let said = guess
            .map(|guess| self.guess(guess))
            .into_iter()
            .chain([known])
            .chain(self.others(decision))
            .chain(self.far(decision));
        said.filter(|said| !said.is_empty()).collect()
    }

    /// What a plan earns more by the owner's answer, in one sentence.
    pub fn plan_guess(&self, plan: &Plan, guess: &Guess) -> String {
        say!(decide::plan_pays_guess, plan = self.plan_name(&plan.sizes), profit = self.guessed(guess))
    }

    /// What a week brings against today by the owner's answer, without its sign: that of both to the smallest unit of
    /// the currency, as plans show them.
    fn guessed(&self, guess: &Guess) -> String {
        let cent = self.speaker.currency().minor_unit();
        let shown = |money: Money| cent.times(money.ratio_to(cent)?.rounded(0));
        let gain = || shown(guess.profit)?.minus(shown(guess.profit.minus(guess.gain)?)?);
        gain().map_or_else(overflow, |gain| self.without_sign(gain))
    }

    /// How many stay by the owner's answer, or how many today's become where a lower price draws more, and what a week
    /// then brings against today. Up where it pays and down where it does not, so that it stands on the same side of
    /// what is needed. Returns an empty text if nobody turns.
    pub fn guess(&self, guess: &Guess) -> String {
        let Some(stay) = guess.stay.map(of_hundred) else { return String::new() };
        let (stay, profit) = (if guess.pays() { stay.ceiling() } else { stay.floor() }, self.guessed(guess));
        let (buyers, then) = (people(guess.buyers), people(guess.then));
        if stay > HUNDRED || then > buyers {
            let (buyers, then) = (self.speaker.counted(buyers), self.speaker.number(then));
            return if guess.pays() {
                say!(decide::guess_becomes_more, buyers = buyers, then = then, profit = profit)
            } else {
                say!(decide::guess_becomes_less, buyers = buyers, then = then, profit = profit)
            };
        }
        let stay = self.speaker.counted(stay);
        if guess.pays() {
            say!(decide::guess_stays_more, buyers = stay, profit = profit)
        } else {
            say!(decide::guess_stays_less, buyers = stay, profit = profit)
        }
    }
}
