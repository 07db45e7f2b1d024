// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/feel_results.h>

#include <QDateTime>
#include <QVBoxLayout>
#include <assessment/feel_study.h>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <stations/girdle/recheck_words.h>

namespace caprail {

namespace {

bool stands(const FeelStanding& row) {
    return row.stands({QDateTime::currentMSecsSinceEpoch()});
}

std::vector<TableColumn<FeelStanding>> standingColumns(const RecordSession& session) {
    using Row = FeelStanding;
    return {{.title = FeelResults::tr("Person"), .text = [](const Row& row) { return qtText(row.person); }},
            {.title = FeelResults::tr("Straightedge"), .text = [](const Row& row) { return qtText(row.straightedge); }},
            {.title = FeelResults::tr("± δ"),
             .text =
                 [&session](const Row& row) {
                     const auto& delta = row.conclusion.delta;
                     return delta ? qtText(formatUncertainty(static_cast<double>(delta->value()), session.units()))
                                  : FeelResults::tr("none yet");
                 },
             .isFigure = true},
            {.title = FeelResults::tr("Answers"),
             .text = [](const Row& row) { return QString::number(row.conclusion.answers); },
             .value = [](const Row& row) { return valueOf(row.conclusion.answers); },
             .isFigure = true},
            {.title = FeelResults::tr("Due"),
             .text =
                 [](const Row& row) {
                     const auto due = row.due();
                     return !due ? QString() : (stands(row) ? QString() : QStringLiteral("⚑ ")) + qtText(format(*due));
                 },
             .ink = [](const Row& row, const Look& look) {
                 return row.due() && !stands(row) ? look.close : QColor();
             }}};
}

} // namespace

FeelResults::FeelResults(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_chart(new FeelChart(this)), m_conclusion(new Label(this)),
      m_standings(new Table<FeelStanding, Who>(
          tr("Whose feel was tried"), [](const FeelStanding& row) { return Who(row.person, row.straightedge); },
          standingColumns(session), this)) {
    m_standings->setObjectName(QStringLiteral("feelStandings"));
    m_conclusion->setWordWrap(true);
    m_conclusion->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_conclusion->setMinimumHeight(m_conclusion->fontMetrics().lineSpacing() * 2);
    m_conclusion->setAlignment(Qt::AlignTop);
    auto* heading = new Label(tr("Whose feel stands until when"), this);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_chart, 3);
    column->addWidget(m_conclusion);
    column->addWidget(heading);
    column->addWidget(m_standings, 1);
}

void FeelResults::show(const WhoFeels& who, const FeelStudyFact* underWay) {
    const auto standing = feelStandingOf(m_session.facts(), who.person, who.straightedge);
    const FeelConclusion drawn = underWay != nullptr ? concludeFeel(*underWay)
                                 : standing          ? standing->conclusion
                                                     : FeelConclusion();
    m_chart->setData(drawn, m_session.units(), screenLook());
    QString sentences =
        feelSentence(m_session.facts(), who, m_session.units(), {QDateTime::currentMSecsSinceEpoch()});
    if (underWay != nullptr && drawn.delta) {
        sentences += QLatin1Char('\n') + tr("More answers make it surer; or stop here.");
    } else if (underWay != nullptr && standing && standing->study != underWay->begun.what.study) {
        sentences += QLatin1Char('\n') + qtText(drawn.missing);
    }
    m_conclusion->setText(sentences);
    showStandings();
}

void FeelResults::showStandings() {
    m_standings->put(feelStandings(m_session.facts()));
}

} // namespace caprail
