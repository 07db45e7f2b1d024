// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <work/recheck_guide.h>

namespace caprail {

/// What a button for an answer says: its key, the word, and what it means.
QString feelMeaning(Feel feel);
/// The letter on its button, so that the key is the one that a person reads in every language.
QString feelKey(Feel feel);
/// The three questions of a bracketed recheck with what was answered, the next one marked: "✓ as built: drags · …".
QString recheckSteps(const Facts& facts, Position position, RecheckAsk ask);
/// "Take out S014, lay in S022: 0.00021 in thicker. It should rock."; empty without an exchange.
QString exchangeSentence(const RecheckGuide& guide, const Units& units);
/// The residual by each way that knows it, a line each with its ±; the one that carries the verdict comes first and says so.
QString carriedLines(const StackResult& stack, const Units& units);
/// What a person's feel with a straightedge is worth, and until when; that it is due, or was never tried.
QString feelSentence(const Facts& facts, const WhoFeels& who, const Units& units, UtcTime now);

} // namespace caprail
