// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/database_link.h>

namespace caprail {

namespace {

constexpr auto partingPatience = std::chrono::milliseconds(500);
constexpr auto answerPatience = std::chrono::seconds(60); ///< after which the server calls a statement off

} // namespace

struct DatabaseLink::Asked {
    WayBack<DatabaseLink> back;
    Connection connection;

    Asked(WayBack<DatabaseLink> way, const DatabasePlace& place) : back(std::move(way)), connection(place) {}

    void answer(const Work& work) {
        Result<void> opened;
        if (!connection.isOpen()) {
            opened = connection.open();
            opened = opened ? connection.limitTo(answerPatience) : opened;
        }
        back.tell([told = work(connection, opened)](DatabaseLink& to) { to.finish(told); });
    }
};

DatabaseLink::DatabaseLink(DatabasePlace place, QObject* parent)
    : QObject(parent), m_place(std::move(place)), m_asked(*this, partingPatience, m_place) {}

DatabaseLink::~DatabaseLink() = default;

void DatabaseLink::put(const QString& topic, Work work) {
    const bool isMore =
        m_asked.post(topic, [work = std::move(work)](Asked& asked, const std::stop_token&) { asked.answer(work); });
    if (isMore && ++m_asking == 1) {
        emit asking();
    }
}

/// What is told may show a box that stays for a while, or let go of this: so it comes last.
void DatabaseLink::finish(const Told& told) {
    if (--m_asking == 0) {
        emit rested();
    }
    told();
}

} // namespace caprail
