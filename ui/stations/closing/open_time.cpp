// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/closing/open_time.h>

#include <QDateTime>
#include <session/look.h>
#include <text/label.h>

namespace caprail {

namespace {
constexpr std::int64_t second = 1'000;
constexpr std::int64_t minute = 60 * second;
} // namespace

OpenTime::OpenTime(QWidget* parent) : Label(parent) {
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.9);
    setFont(large);
    setSubject(tr("Sealant's open time"));
    hide();
}

void OpenTime::run(UtcTime beadLaid, std::optional<std::int64_t> openMinutes) {
    if (!openMinutes) {
        stop();
        return;
    }
    m_ends = UtcTime{beadLaid.milliseconds + *openMinutes * minute};
    m_timer.start(static_cast<int>(second), this);
    tell();
    setVisible(true);
}

void OpenTime::stop() {
    m_timer.stop();
    setVisible(false);
}

QString OpenTime::words(UtcTime now) const {
    const std::int64_t left = m_ends.milliseconds - now.milliseconds;
    // Rounded up, so that the last second is shown as one and the end as zero.
    const std::int64_t seconds = ((left < 0 ? -left : left) + second - 1) / second;
    const QString figure = QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
    return left > 0 ? tr("Sealant open: %1 left").arg(figure)
                    : tr("✕ Open time over since %1: clean off, lay a new bead").arg(figure);
}

void OpenTime::tell() {
    const UtcTime now{QDateTime::currentMSecsSinceEpoch()};
    const bool isOver = m_ends.milliseconds <= now.milliseconds;
    const bool isNear = m_ends.milliseconds - now.milliseconds < 3 * minute;
    setText(words(now));
    const Look look = screenLook();
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, isOver ? look.out : isNear ? look.close : look.ink);
    setPalette(colours);
}

void OpenTime::timerEvent(QTimerEvent*) {
    tell();
}

} // namespace caprail
