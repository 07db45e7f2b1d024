// SPDX-License-Identifier: GPL-3.0-or-later
#include <ledger/kinds.h>

#include <algorithm>
#include <array>
#include <base/say.h>

namespace caprail {

std::vector<CellView> viewsOf(const std::vector<Cell>& cells) {
    std::vector<CellView> views;
    views.reserve(cells.size());
    for (const Cell& cell : cells) {
        views.push_back(std::visit([](const auto& held) { return CellView(held); }, cell));
    }
    return views;
}

bool CellReader::refuseLast(const std::string& sentence) {
    const std::string& name = m_columns[m_at == 0 ? 0 : m_at - 1].name;
    m_refusal = "“" + name + "” " + sentence + (sentence.ends_with('.') ? "" : ".");
    return false;
}

bool CellReader::refuseType(Column::Type wanted) {
    if (std::holds_alternative<std::monostate>(m_cells[m_at - 1])) {
        return refuseLast(Core::say("is missing"));
    }
    return refuseLast(wanted == Column::Type::integer ? Core::say("must be a whole number")
                                                      : Core::say("must be a text"));
}

void Codec<NameList>::write(const NameList& value, std::vector<Cell>& out) {
    std::string text;
    for (const auto& name : value.names) {
        text += (text.empty() ? "" : " ") + name;
    }
    out.emplace_back(std::move(text));
}

bool Codec<NameList>::read(CellReader& in, NameList& value) {
    std::string_view text;
    if (!in.text(text)) {
        return false;
    }
    value.names.clear();
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        if (end == at) {
            return in.refuseLast(Core::say("must hold names parted by single spaces"));
        }
        value.names.emplace_back(text.substr(at, end - at));
        at = end + 1;
    }
    return !text.ends_with(' ') || in.refuseLast(Core::say("must hold names parted by single spaces"));
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

template <class S>
Result<void> read(const std::vector<Column>& columns, std::span<const CellView> cells, Body& out) {
    S& body = out.emplace<S>();
    CellReader in(columns, cells);
    const bool isGood = std::apply(
        [&]<class... F>(const F&... fields) {
            const auto take = [&]<class Owner, class Member>(const Field<Owner, Member>& f) {
                return Codec<Member>::read(in, body.*(f.member));
            };
            return (take(fields) && ...);
        },
        S::fields());
    if (!isGood) {
        return refuse(Core::say("The entry “%1” cannot be read: %2", S::kind, in.refusal()));
    }
    return {};
}

/// The four members that every entry has, and one per column.
std::vector<CanonicalMember> canonicalOf(const std::vector<Column>& columns) {
    using Of = CanonicalMember::Of;
    std::vector<CanonicalMember> members{
        {"kind", Of::kind}, {"person", Of::person}, {"sequence", Of::sequence}, {"time", Of::time}};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        members.push_back({columns[i].name, Of::column, i});
    }
    std::ranges::sort(members, {}, &CanonicalMember::name);
    for (CanonicalMember& member : members) {
        member.name = ",\"" + member.name + "\":"; // column names are plain ASCII identifiers
    }
    return members;
}

template <class S> KindInfo infoOf() {
    KindInfo info{S::kind, S::title, columnsOf<S>(), {}};
    info.canonical = canonicalOf(info.columns);
    return info;
}

using Reader = Result<void> (*)(const std::vector<Column>&, std::span<const CellView>, Body&);

template <class... S> std::vector<KindInfo> infosOf(const OneOf<roomOfBody, S...>*) {
    return {infoOf<S>()...};
}

template <class... S> constexpr auto readersOf(const OneOf<roomOfBody, S...>*) {
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
    return body.visit([](const auto& b) { return write(b); });
}

Result<Body> bodyFrom(std::size_t index, const std::vector<Cell>& cells) {
    Result<Body> body;
    if (auto done = readBody(index, viewsOf(cells), *body); !done) {
        return tl::unexpected(done.error());
    }
    return body;
}

Result<void> readBody(std::size_t index, std::span<const CellView> cells, Body& body) {
    static constexpr auto readers = readersOf(static_cast<const Body*>(nullptr));
    const KindInfo& info = allKinds()[index];
    if (cells.size() != info.columns.size()) {
        return refuse(Core::say("The entry “%1” has %2 values, but its kind has %3.", info.kind, cells.size(),
                                info.columns.size()));
    }
    return readers[index](info.columns, cells, body);
}

} // namespace caprail
