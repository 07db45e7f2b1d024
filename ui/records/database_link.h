// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QString>
#include <catalogue/connection.h>
#include <functional>
#include <memory>
#include <session/apart.h>
#include <type_traits>

namespace caprail {

/// A database that is asked from a thread of its own, so that no window waits for a server: questions are answered one
/// after another, each in the window's thread; one that is asked again before its turn came is asked once, with the
/// latest wording. A connection that was lost is opened again for the next question. Closing the window does not wait
/// for a server that hangs.
class DatabaseLink : public QObject {
    Q_OBJECT
public:
    explicit DatabaseLink(DatabasePlace place, QObject* parent = nullptr);
    ~DatabaseLink() override;

    /// `question` runs in the thread; `answer`, which is given its result, in the window's, unless `this` is gone by
    /// then. `topic` says what a later question takes the place of.
    template <class Question, class Answer> void ask(const QString& topic, Question question, Answer answer) {
        using Given = std::invoke_result_t<Question, Connection&>;
        put(topic, [question = std::move(question), answer = std::move(answer)](Connection& connection,
                                                                                const Result<void>& opened) {
            auto given = std::make_shared<Given>(opened ? question(connection) : Given(tl::unexpected(opened.error())));
            return [given, answer] { answer(std::move(*given)); };
        });
    }
    /// Whether a question waits for its answer.
    [[nodiscard]] bool isAsking() const { return m_asking > 0; }
    [[nodiscard]] const DatabasePlace& place() const { return m_place; }

signals:
    void asking(); ///< the first question after a rest
    void rested(); ///< all are answered

private:
    using Told = std::function<void()>;
    using Work = std::function<Told(Connection& connection, const Result<void>& opened)>;
    void put(const QString& topic, Work work);
    void finish(const Told& told);

    struct Asked; ///< the connection, in its thread
    DatabasePlace m_place;
    Apart<Asked, DatabaseLink> m_asked;
    int m_asking = 0;
};

} // namespace caprail
