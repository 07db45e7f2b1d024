// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/clock_notice.h>

#include <QCoreApplication>
#include <QStringList>
#include <ledger/qt_text.h>
#include <ledger/remarks.h>

namespace caprail {

namespace {

struct ClockText {
    Q_DECLARE_TR_FUNCTIONS(ClockNotice)
};

} // namespace

QString clockNotice(const Ledger& ledger, UtcTime now) {
    constexpr std::size_t named = 2;
    const std::vector<LedgerRemark> remarks = clockRemarks(ledger, now);
    QStringList sentences;
    // The newest first: that is where the clock can still be set right.
    for (auto remark = remarks.rbegin(); remark != remarks.rend() && sentences.size() < static_cast<int>(named);
         ++remark) {
        sentences << qtText(remark->sentence);
    }
    if (remarks.size() > named) {
        sentences << ClockText::tr("More entries of which that is true: %1.").arg(remarks.size() - named);
    }
    return sentences.join(QLatin1Char(' '));
}

} // namespace caprail
