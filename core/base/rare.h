// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <concepts>
#include <memory>
#include <optional>
#include <utility>

namespace caprail {

/// An optional value that is seldom there. It is used as `std::optional` is, and turns from and into one; but while it
/// is empty it takes the room of a pointer, where an optional takes that of the value. A ledger of 100 000 entries
/// holds some in each of them, and nearly all are empty.
template <class T> class Rare {
public:
    using value_type = T;

    Rare() noexcept = default;
    Rare(std::nullopt_t) noexcept {}
    template <class U = T>
        requires(std::convertible_to<U &&, T> && !std::same_as<std::remove_cvref_t<U>, Rare> &&
                 !std::same_as<std::remove_cvref_t<U>, std::optional<T>>)
    Rare(U&& value) : m_value(std::make_unique<T>(std::forward<U>(value))) {}
    Rare(std::optional<T> value) : m_value(value ? std::make_unique<T>(std::move(*value)) : nullptr) {}
    Rare(const Rare& other) : m_value(other.m_value ? std::make_unique<T>(*other.m_value) : nullptr) {}
    Rare(Rare&&) noexcept = default;
    Rare& operator=(const Rare& other) {
        if (this != &other) {
            m_value = other.m_value ? std::make_unique<T>(*other.m_value) : nullptr;
        }
        return *this;
    }
    Rare& operator=(Rare&&) noexcept = default;
    ~Rare() = default;

    [[nodiscard]] bool has_value() const noexcept { return m_value != nullptr; }
    [[nodiscard]] explicit operator bool() const noexcept { return has_value(); }
    /// Only where there is a value.
    [[nodiscard]] const T& operator*() const noexcept { return *m_value; }
    [[nodiscard]] T& operator*() noexcept { return *m_value; }
    [[nodiscard]] const T* operator->() const noexcept { return m_value.get(); }
    [[nodiscard]] T* operator->() noexcept { return m_value.get(); }
    template <class U> [[nodiscard]] T value_or(U&& other) const {
        return m_value ? *m_value : static_cast<T>(std::forward<U>(other));
    }
    template <class... A> T& emplace(A&&... arguments) {
        m_value = std::make_unique<T>(std::forward<A>(arguments)...);
        return *m_value;
    }
    void reset() noexcept { m_value.reset(); }
    operator std::optional<T>() const { return m_value ? std::optional<T>(*m_value) : std::nullopt; }

    friend bool operator==(const Rare& a, const Rare& b) {
        return a.m_value && b.m_value ? *a.m_value == *b.m_value : !a.m_value == !b.m_value;
    }
    friend bool operator==(const Rare& a, std::nullopt_t) noexcept { return !a.m_value; }
    template <class U>
    requires(!std::same_as<U, Rare> && !std::same_as<U, std::optional<T>> && !std::same_as<U, std::nullopt_t> &&
             requires(const T& a, const U& b) { a == b; }) friend bool operator==(const Rare& a, const U& b) {
        return a.m_value && *a.m_value == b;
    }

private:
    std::unique_ptr<T> m_value;
};

} // namespace caprail
