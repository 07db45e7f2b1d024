// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/girdle/actions.h>

#include <QMenu>
#include <stations/common/findings.h>
#include <stations/common/station_text.h>
#include <text/ask.h>
#include <work/take_over.h>

namespace caprail {

GirdleActions::GirdleActions(RecordSession& session, QWidget* parent) : QToolButton(parent), m_session(session) {
    setText(tr("Parts and stacks"));
    setPopupMode(InstantPopup);
    setMinimumHeight(30);
    auto* menu = new QMenu(this);
    m_takeOff = menu->addAction(tr("Take all stacks off"), this, &GirdleActions::takeAllOff);
    m_putBack = menu->addAction(tr("Put all stacks back"), this, &GirdleActions::putAllBack);
    m_takeApart = menu->addAction({}, this, &GirdleActions::takeApart);
    menu->addSeparator();
    for (const auto& [work, words] : allWords<WasherWork>()) {
        m_washer[static_cast<std::size_t>(work)] =
            menu->addAction({}, this, [this, what = work] { m_session.appendAndSay(WasherWorked{m_position, what, {}}); });
    }
    m_nut = menu->addAction({}, this, [this] {
        changePart(Part::nutAndWasher, tr("What was changed at %1?").arg(qtText(describe(m_position))));
    });
    menu->addAction(tr("Pan rail worked on…"), this, [this] {
        changePart(Part::panRail, tr("What was done to the pan rail? All gaps must be read again."));
    });
    menu->addSeparator();
    m_finding = menu->addAction({}, this, &GirdleActions::openFinding);
    setMenu(menu);
    refresh();
}

void GirdleActions::setPosition(Position position) {
    m_position = position;
    refresh();
}

void GirdleActions::refresh() {
    const Facts& facts = m_session.facts();
    const QString at = qtText(code(m_position));
    m_takeOff->setEnabled(!moveAllStacks(facts, StackMove::takenOff).empty());
    m_putBack->setEnabled(!moveAllStacks(facts, StackMove::putBack).empty());
    m_takeApart->setText(tr("Take the stack at %1 apart").arg(at));
    m_takeApart->setEnabled(facts.stacks.contains(m_position));
    const QString washer[] = {tr("Washer at %1 turned"), tr("Washer at %1 turned over"), tr("Washer at %1 dressed")};
    for (std::size_t i = 0; i < m_washer.size(); ++i) {
        m_washer[i]->setText(washer[i].arg(at));
    }
    m_nut->setText(tr("Another nut or washer at %1…").arg(at));
    m_finding->setText(tr("Open a finding at %1…").arg(at));
}

void GirdleActions::takeAllOff() {
    m_session.appendAllAndSay(moveAllStacks(m_session.facts(), StackMove::takenOff));
}

void GirdleActions::putAllBack() {
    m_session.appendAllAndSay(moveAllStacks(m_session.facts(), StackMove::putBack));
}

void GirdleActions::takeApart() {
    m_session.appendAndSay(StackMoved{m_position, StackMove::takenApart});
}

void GirdleActions::changePart(Part part, const QString& question) {
    if (const auto what = askText(this, capitalised(qtShown(part)), question)) {
        const std::string place = part == Part::nutAndWasher ? code(m_position) : std::string();
        m_session.appendAndSay(PartChanged{part, place, coreText(*what)});
    }
}

void GirdleActions::openFinding() {
    const auto seen = askText(this, tr("Finding"), tr("What was seen at %1?").arg(qtText(describe(m_position))));
    if (seen) {
        m_session.appendAndSay(FindingOpened{nextFinding(m_session.facts()), code(m_position), coreText(*seen)});
    }
}

} // namespace caprail
