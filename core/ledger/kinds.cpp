// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/kinds.h>

#include <algorithm>
#include <array>
#include <numeric>
#include <base/say.h>

namespace caprail {

tl::unexpected<Problem> CellReader::refuseLast(const std::string& sentence) const {
    const std::string& name = m_columns[m_at == 0 ? 0 : m_at - 1].name;
    return refuse("“" + name + "” " + sentence + (sentence.ends_with('.') ? "" : "."));
}

Result<std::int64_t> CellReader::integer() {
    const Cell& cell = m_cells[m_at++];
    if (const auto* n = std::get_if<std::int64_t>(&cell)) {
        return *n;
    }
    return refuseLast(std::holds_alternative<std::monostate>(cell) ? Core::say("is missing")
                                                                   : Core::say("must be a whole number"));
}

Result<std::string> CellReader::text() {
    const Cell& cell = m_cells[m_at++];
    if (const auto* s = std::get_if<std::string>(&cell)) {
        return *s;
    }
    return refuseLast(std::holds_alternative<std::monostate>(cell) ? Core::say("is missing")
                                                                   : Core::say("must be a text"));
}

void Codec<NameList>::write(const NameList& value, std::vector<Cell>& out) {
    std::string text;
    for (const auto& name : value.names) {
        text += (text.empty() ? "" : " ") + name;
    }
    out.emplace_back(std::move(text));
}

Result<NameList> Codec<NameList>::read(CellReader& in) {
    auto text = in.text();
    if (!text) {
        return tl::unexpected(text.error());
    }
    NameList list;
    std::size_t at = 0;
    while (at < text->size()) {
        const std::size_t end = std::min(text->find(' ', at), text->size());
        if (end == at) {
            return in.refuseLast(Core::say("must hold names parted by single spaces"));
        }
        list.names.push_back(text->substr(at, end - at));
        at = end + 1;
    }
    if (text->ends_with(' ')) {
        return in.refuseLast(Core::say("must hold names parted by single spaces"));
    }
    return list;
}

namespace {

template <class S> std::vector<Column> columnsOf() {
    std::vector<Column> all;
    std::apply(
        [&]<class... F>(const F&... fields) {
            const auto add = [&]<class Owner, class Member>(const Field<Owner, Member>& f) {
                for (auto& column : Codec<Member>::columns(f.name)) {
                    all.push_back(std::move(column));
                }
            };
            (add(fields), ...);
        },
        S::fields());
    return all;
}

template <class S> std::vector<Cell> write(const S& body) {
    std::vector<Cell> cells;
    std::apply(
        [&]<class... F>(const F&... fields) {
            const auto add = [&]<class Owner, class Member>(const Field<Owner, Member>& f) {
                Codec<Member>::write(body.*(f.member), cells);
            };
            (add(fields), ...);
        },
        S::fields());
    return cells;
}

template <class S> Result<Body> read(const std::vector<Column>& columns, const std::vector<Cell>& cells) {
    S body;
    CellReader in(columns, cells);
    Result<void> outcome;
    std::apply(
        [&]<class... F>(const F&... fields) {
            const auto take = [&]<class Owner, class Member>(const Field<Owner, Member>& f) {
                if (!outcome) {
                    return;
                }
                auto value = Codec<Member>::read(in);
                if (value) {
                    body.*(f.member) = std::move(*value);
                } else {
                    outcome = tl::unexpected(value.error());
                }
            };
            (take(fields), ...);
        },
        S::fields());
    if (!outcome) {
        return refuse(Core::say("The entry “%1” cannot be read: %2", S::kind, outcome.error().sentence));
    }
    return Body(std::move(body));
}

template <class S> KindInfo infoOf() {
    KindInfo info{S::kind, S::title, columnsOf<S>(), {}};
    info.canonicalOrder.resize(info.columns.size());
    std::iota(info.canonicalOrder.begin(), info.canonicalOrder.end(), std::size_t{0});
    std::ranges::sort(info.canonicalOrder, {}, [&](std::size_t i) { return std::string_view(info.columns[i].name); });
    return info;
}

using Reader = Result<Body> (*)(const std::vector<Column>&, const std::vector<Cell>&);

template <class... S> std::vector<KindInfo> infosOf(const std::variant<S...>*) {
    return {infoOf<S>()...};
}

template <class... S> constexpr auto readersOf(const std::variant<S...>*) {
    return std::array<Reader, sizeof...(S)>{&read<S>...};
}

} // namespace

std::span<const KindInfo> allKinds() {
    static const std::vector<KindInfo> infos = infosOf(static_cast<const Body*>(nullptr));
    return infos;
}

const KindInfo& kindOf(const Body& body) {
    return allKinds()[body.index()];
}

namespace {

/// Kinds with a word in common, so that whoever guessed “gap” is told “gap_reading”.
std::string kindsLike(std::string_view kind) {
    std::string like;
    for (const KindInfo& info : allKinds()) {
        for (std::size_t at = 0; at < info.kind.size(); at = std::min(info.kind.find('_', at), info.kind.size()) + 1) {
            const std::string_view part = info.kind.substr(at, info.kind.find('_', at) - at);
            if (part.size() > 2 && kind.find(part) != std::string_view::npos) {
                like += (like.empty() ? "" : ", ") + std::string(info.kind);
                break;
            }
        }
    }
    return like;
}

} // namespace

Result<std::size_t> kindIndex(std::string_view kind) {
    const auto kinds = allKinds();
    const auto at = std::ranges::find(kinds, kind, &KindInfo::kind);
    if (at == kinds.end()) {
        const std::string like = kindsLike(kind);
        return refuse(like.empty()
                          ? Core::say("This program knows no entry kind “%1”: “caprail help entries” lists them.", kind)
                          : Core::say("This program knows no entry kind “%1”; there are: %2.", kind, like));
    }
    return static_cast<std::size_t>(at - kinds.begin());
}

std::vector<Cell> cellsOf(const Body& body) {
    return std::visit([](const auto& b) { return write(b); }, body);
}

Result<Body> bodyFrom(std::size_t index, const std::vector<Cell>& cells) {
    static constexpr auto readers = readersOf(static_cast<const Body*>(nullptr));
    const KindInfo& info = allKinds()[index];
    if (cells.size() != info.columns.size()) {
        return refuse(Core::say("The entry “%1” has %2 values, but its kind has %3.", info.kind, cells.size(),
                                info.columns.size()));
    }
    return readers[index](info.columns, cells);
}

} // namespace caprail
