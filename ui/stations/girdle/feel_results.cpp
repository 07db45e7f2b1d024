// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/feel_results.h>

#include <QDateTime>
#include <QVBoxLayout>
#include <assessment/feel_study.h>
#include <session/look.h>
#include <stations/common/plain_table.h>
#include <stations/common/station_text.h>
#include <stations/girdle/recheck_words.h>

namespace caprail {

FeelResults::FeelResults(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_chart(new FeelChart(this)), m_conclusion(new Label(this)),
      m_standings(new PlainTable(tr("Whose feel was tried"),
                                 {tr("Person"), tr("Straightedge"), tr("± δ"), tr("Answers"), tr("Due")}, this)) {
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
    std::vector<QStringList> rows;
    std::vector<bool> areDue;
    for (const FeelStanding& standing : feelStandings(m_session.facts())) {
        const auto& delta = standing.conclusion.delta;
        const auto due = standing.due();
        const bool stands = standing.stands({QDateTime::currentMSecsSinceEpoch()});
        rows.push_back(
            {qtText(standing.person), qtText(standing.straightedge),
             delta ? qtText(formatUncertainty(static_cast<double>(delta->value()), m_session.units())) : tr("none yet"),
             QString::number(standing.conclusion.answers),
             !due     ? QString()
             : stands ? qtText(format(*due))
                      : QStringLiteral("⚑ ") + qtText(format(*due))});
        areDue.push_back(due && !stands);
    }
    m_standings->show(rows);
    for (std::size_t row = 0; row < areDue.size(); ++row) {
        if (areDue[row]) {
            m_standings->tint(static_cast<int>(row), screenLook().close);
        }
    }
}

} // namespace caprail
