// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <concepts>
#include <cstddef>
#include <memory>
#include <tuple>
#include <type_traits>
#include <utility>
#include <variant>

namespace caprail {

/// A value that lies beside its owner, and is copied with it. It is there from the start; only what it was moved out of
/// holds none, and may then be assigned or destroyed.
template <class T> class Beside {
public:
    Beside() : m_value(std::make_unique<T>()) {}
    Beside(T value) : m_value(std::make_unique<T>(std::move(value))) {}
    Beside(const Beside& other) : m_value(other.m_value ? std::make_unique<T>(*other.m_value) : nullptr) {}
    Beside(Beside&&) noexcept = default;
    Beside& operator=(const Beside& other) {
        if (this != &other) {
            m_value = other.m_value ? std::make_unique<T>(*other.m_value) : nullptr;
        }
        return *this;
    }
    Beside& operator=(Beside&&) noexcept = default;
    ~Beside() = default;

    [[nodiscard]] const T& operator*() const noexcept { return *m_value; }
    [[nodiscard]] T& operator*() noexcept { return *m_value; }

private:
    std::unique_ptr<T> m_value;
};

/// One value of several types, as `std::variant` is, for many values of unlike types: one that is larger than `room`
/// bytes lies beside, so that a list of 100 000 has not 100 000 times the room of the largest. It begins with the
/// first.
template <std::size_t room, class... Types> class OneOf {
    template <class T> static constexpr bool liesBeside = (sizeof(T) > room);
    template <class T> using Held = std::conditional_t<liesBeside<T>, Beside<T>, T>;
    template <class T> static constexpr bool isOne = (std::same_as<T, Types> || ...);

public:
    static constexpr std::size_t count = sizeof...(Types);
    template <std::size_t i> using Type = std::tuple_element_t<i, std::tuple<Types...>>;

    /// Bytes that a value of the type with this index takes beside its owner.
    static constexpr std::size_t besideOf(std::size_t index) {
        constexpr std::array<std::size_t, count> sizes{(liesBeside<Types> ? sizeof(Types) : 0)...};
        return sizes[index];
    }

    OneOf() = default;
    template <class T>
    requires isOne<std::remove_cvref_t<T>> OneOf(T&& value)
        : m_held(std::in_place_type<Held<std::remove_cvref_t<T>>>, std::forward<T>(value)) {}

    /// Of its type in the list.
    [[nodiscard]] std::size_t index() const noexcept { return m_held.index(); }

    template <class T>
    requires isOne<T>
    [[nodiscard]] bool is() const noexcept { return std::holds_alternative<Held<T>>(m_held); }

    /// The value where it is of this type, else null.
    template <class T>
    requires isOne<T>
    [[nodiscard]] const T* as() const noexcept { return pointer<const T>(std::get_if<Held<T>>(&m_held)); }
    template <class T>
    requires isOne<T>
    [[nodiscard]] T* as() noexcept { return pointer<T>(std::get_if<Held<T>>(&m_held)); }

    /// The value of this type; throws `std::bad_variant_access` where it is of another.
    template <class T>
    requires isOne<T>
    [[nodiscard]] const T& get() const { return plain(std::get<Held<T>>(m_held)); }
    template <class T>
    requires isOne<T>
    [[nodiscard]] T& get() { return plain(std::get<Held<T>>(m_held)); }

    /// A new value of this type in the place of what was there.
    template <class T>
    requires isOne<T> T& emplace() {
        m_held.template emplace<Held<T>>();
        return *as<T>();
    }

    /// What `look` gives for the value; it takes any of the types.
    template <class Look> decltype(auto) visit(Look&& look) const {
        return std::visit([&look](const auto& held) -> decltype(auto) { return look(plain(held)); }, m_held);
    }
    template <class Look> decltype(auto) visit(Look&& look) {
        return std::visit([&look](auto& held) -> decltype(auto) { return look(plain(held)); }, m_held);
    }

private:
    template <class T> static T& plain(T& held) noexcept { return held; }
    template <class T> static T& plain(Beside<T>& held) noexcept { return *held; }
    template <class T> static const T& plain(const Beside<T>& held) noexcept { return *held; }
    template <class T, class H> static T* pointer(H* held) noexcept {
        return held == nullptr ? nullptr : &plain(*held);
    }

    std::variant<Held<Types>...> m_held;
};

} // namespace caprail
