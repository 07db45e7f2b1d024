// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/trial_fit/way.h>

#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>
#include <algorithm>
#include <session/look.h>
#include <stations/common/station_text.h>
#include <text/label.h>

namespace caprail {

namespace {

template <Worded E> void fill(QComboBox* box, const QString& what, const QString& pattern) {
    for (const auto& entry : allWords<E>()) {
        box->addItem(pattern.arg(qtShown(entry.value)));
    }
    nameBox(*box, what);
}

} // namespace

TrialFitWay::TrialFitWay(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_face(new QComboBox(this)), m_end(new QComboBox(this)),
      m_side(new QComboBox(this)), m_set(new QPushButton(tr("Girdle lies like this"), this)), m_state(new Label(this)) {
    m_side->setObjectName(QStringLiteral("cutoutSide"));
    fill<GirdleFace>(m_face, tr("Face that is up"), tr("%1 up"));
    fill<EngineEnd>(m_end, tr("End that the cutout is towards"), tr("cutout to the %1"));
    fill<Side>(m_side, tr("Side that the cutout is on"), tr("on the %1"));
    m_state->setWordWrap(true);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->addWidget(m_face, 0, 0);
    grid->addWidget(m_end, 0, 1);
    grid->addWidget(m_side, 0, 2);
    grid->addWidget(m_set, 0, 3);
    grid->addWidget(m_state, 1, 0, 1, 4);
    connect(m_set, &QPushButton::clicked, this, &TrialFitWay::store);
    refresh();
}

void TrialFitWay::refresh() {
    const Facts& facts = m_session.facts();
    const std::int64_t entry = facts.girdleWay ? facts.girdleWay->entry : 0;
    if (entry != m_shown) {
        // Only when the record says something new, so that a choice being made is not undone.
        m_shown = entry;
        GirdleWaySet way;
        if (facts.girdleWay) {
            way = facts.girdleWay->what;
        } else if (facts.layout) {
            const LayoutDescription& layout = facts.layout->description();
            way.cutoutSide = layout.pickupSide;
            way.cutoutTowards = layout.pickupCap * 2 > layout.caps ? EngineEnd::rear : EngineEnd::front;
        }
        m_face->setCurrentIndex(static_cast<int>(way.faceUp));
        m_end->setCurrentIndex(static_cast<int>(way.cutoutTowards));
        m_side->setCurrentIndex(static_cast<int>(way.cutoutSide));
    }
    const auto& checks = m_session.assessment().checks;
    const auto check = std::ranges::find(checks, CheckKind::girdleWay, &Check::kind);
    if (check == checks.end()) {
        m_state->clear();
        return;
    }
    m_state->setText(sign(check->state) + QStringLiteral(" ") + stateWord(check->state) + QStringLiteral("  ") +
                     qtText(check->sentence) + QStringLiteral(" ") + qtText(check->remedy));
    QPalette palette = m_state->palette();
    palette.setColor(QPalette::WindowText, screenLook().of(check->state));
    m_state->setPalette(palette);
}

void TrialFitWay::store() {
    m_session.appendAndSay(GirdleWaySet{static_cast<GirdleFace>(m_face->currentIndex()),
                                        static_cast<EngineEnd>(m_end->currentIndex()),
                                        static_cast<Side>(m_side->currentIndex())});
}

} // namespace caprail
