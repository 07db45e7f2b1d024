// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/typed_values.h>

#include <ledger/expectations.h>
#include <base/say.h>

namespace caprail {

namespace {

template <class T> constexpr bool isEntered = false;
template <class Q> constexpr bool isEntered<Entered<Q>> = true;

/// Calls `look(kind, field name, quantity)` for each quantity that was typed, until one gives a sentence.
template <class Look> std::optional<std::string> firstOf(const Body& body, Look look) {
    std::optional<std::string> found;
    const auto each = [&]<class S>(const S& entry) {
        const auto one = [&]<class Owner, class Member>(const Field<Owner, Member>& f) {
            const Member& member = entry.*(f.member);
            if constexpr (isEntered<Member>) {
                found = found ? found : look(S::kind, f.name, member);
            } else if constexpr (requires { member.has_value(); }) {
                if constexpr (isEntered<typename Member::value_type>) {
                    found = found || !member ? found : look(S::kind, f.name, *member);
                }
            }
        };
        std::apply([&](const auto&... fields) { (one(fields), ...); }, S::fields());
    };
    body.visit(each);
    return found;
}

/// "does_not_go" reads "does not go".
std::string label(std::string_view fieldName) {
    std::string text(fieldName);
    for (char& c : text) {
        c = c == '_' ? ' ' : c;
    }
    return Core::say(text);
}

/// To the digit at which a contradiction can be seen.
std::string shownFine(Length l, const Units& units) {
    return formatFine(l, units);
}
template <class Q> std::string shownFine(Q q, const Units& units) {
    return format(q, units);
}

Expected<Length> expectedOf(std::string_view kind, std::string_view fieldName, Length) {
    return expectedLength(kind, fieldName);
}
Expected<Torque> expectedOf(std::string_view kind, std::string_view fieldName, Torque) {
    return expectedTorque(kind, fieldName);
}
Expected<Angle> expectedOf(std::string_view kind, std::string_view fieldName, Angle) {
    return expectedAngle(kind, fieldName);
}
Expected<Temperature> expectedOf(std::string_view kind, std::string_view fieldName, Temperature) {
    return expectedTemperature(kind, fieldName);
}

} // namespace

std::optional<std::string> contradictionIn(const Body& body) {
    return firstOf(body, [](std::string_view, std::string_view fieldName, const auto& entered) {
        return fitOfTyped(entered) != TypedFit::contradicts
                   ? std::nullopt
                   : std::optional(Core::say("“%1” was typed as “%2”, but %3 is stored with it: one of them is wrong.",
                                             label(fieldName), entered.typed, shownFine(entered.value, Units{})));
    });
}

std::optional<std::string> unreadableIn(const Body& body) {
    return firstOf(body, [](std::string_view, std::string_view fieldName, const auto& entered) {
        return fitOfTyped(entered) != TypedFit::unreadable
                   ? std::nullopt
                   : std::optional(Core::say("“%1” cannot be read as “%2”: type the value with its unit.",
                                             entered.typed, label(fieldName)));
    });
}

std::optional<std::string> implausibleIn(const Body& body, const Units& units) {
    return firstOf(
        body,
        [&](std::string_view kind, std::string_view fieldName, const auto& entered) -> std::optional<std::string> {
            const auto expected = expectedOf(kind, fieldName, entered.value);
            const bool isWithin = !(expected.smallest && entered.value < *expected.smallest) &&
                                  !(expected.largest && entered.value > *expected.largest);
            if (isWithin || isInsisted(entered.typed) || !expected.smallest || !expected.largest) {
                return std::nullopt;
            }
            return Core::say("%1 is not plausible for “%2”, which is expected within %3 to %4: correct it, or "
                             "type ! behind it if it is really so.",
                             shownFine(entered.value, units), label(fieldName), format(*expected.smallest, units),
                             format(*expected.largest, units));
        });
}

bool isAnyInsistedOn(const Body& body) {
    return firstOf(body,
                   [](std::string_view, std::string_view, const auto& entered) {
                       return isInsisted(entered.typed) ? std::optional<std::string>("") : std::nullopt;
                   })
        .has_value();
}

} // namespace caprail
