// SPDX-License-Identifier: GPL-3.0-or-later
#include <records/shop_tools.h>

#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>
#include <ledger/qt_text.h>
#include <records/shop_delegate.h>
#include <records/shop_window.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

QComboBox* choice(const QString& name, const QStringList& words) {
    auto* box = new QComboBox;
    box->addItems(words);
    box->setAccessibleName(name);
    return box;
}

} // namespace

ShopTools::ShopTools(const QString& choose, QWidget* parent)
    : QWidget(parent), m_search(new QLineEdit),
      m_state(choice(ShopWindow::tr("State"),
                     {ShopWindow::tr("Any state"), ShopWindow::tr("Measuring"), ShopWindow::tr("Trial fit open"),
                      ShopWindow::tr("Ready to close"), ShopWindow::tr("Signed off"),
                      ShopWindow::tr("Out, stale or moved"), ShopWindow::tr("No record that can be read")})),
      m_due(choice(ShopWindow::tr("Calibration"), {ShopWindow::tr("Any calibration"), ShopWindow::tr("Overdue"),
                                                   ShopWindow::tr("Due within 30 days")})),
      m_person(choice(ShopWindow::tr("Person"), {ShopWindow::tr("Anyone")})),
      m_group(choice(ShopWindow::tr("Group"),
                     {ShopWindow::tr("No groups"), ShopWindow::tr("By customer"), ShopWindow::tr("By state")})),
      m_place(new Label) {
    m_search->setPlaceholderText(ShopWindow::tr("Search customers, engines, people, notes and findings"));
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setAccessibleName(ShopWindow::tr("Search"));
    m_search->setClearButtonEnabled(true);
    m_state->setObjectName(QStringLiteral("state"));
    m_due->setObjectName(QStringLiteral("calibration"));
    m_person->setObjectName(QStringLiteral("person"));
    m_group->setObjectName(QStringLiteral("group"));
    m_person->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* button = new QPushButton(choose);
    m_place->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

    auto* first = new QHBoxLayout;
    first->addWidget(m_search, 3);
    first->addWidget(m_place, 2);
    first->addWidget(button);
    auto* second = new QHBoxLayout;
    for (QComboBox* box : {m_state, m_due, m_person, m_group}) {
        second->addWidget(box);
    }
    second->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(first);
    column->addLayout(second);

    connect(button, &QPushButton::clicked, this, &ShopTools::chooseClicked);
    connect(m_search, &QLineEdit::textChanged, this, &ShopTools::searched);
    for (QComboBox* box : {m_state, m_due, m_person}) {
        connect(box, &QComboBox::currentIndexChanged, this, &ShopTools::filtered);
    }
    connect(m_group, &QComboBox::currentIndexChanged, this, [this] { emit grouped(); });
}

QString ShopTools::typed() const {
    return m_search->text().trimmed();
}

ListFilter ShopTools::filter() const {
    return {static_cast<ListFilter::State>(m_state->currentIndex()),
            static_cast<ListFilter::Due>(m_due->currentIndex()),
            m_person->currentIndex() > 0 ? m_person->currentText().toStdString() : std::string()};
}

ListingWish::Grouping ShopTools::grouping() const {
    return static_cast<ListingWish::Grouping>(m_group->currentIndex());
}

void ShopTools::setPlace(const QString& place) {
    m_place->setText(place);
    setTip(m_place, place);
}

void ShopTools::setPeople(const QStringList& names) {
    const QString person = m_person->currentIndex() > 0 ? m_person->currentText() : QString();
    QStringList people = QStringList{ShopWindow::tr("Anyone")} + names;
    if (!person.isEmpty() && !names.contains(person)) {
        people << person; // it is what the list is filtered by, also while it is nobody's here
    }
    QStringList listed;
    for (int i = 0; i < m_person->count(); ++i) {
        listed << m_person->itemText(i);
    }
    if (people != listed) {
        const QSignalBlocker quiet(m_person);
        m_person->clear();
        m_person->addItems(people);
        m_person->setCurrentIndex(std::max(0, static_cast<int>(people.indexOf(person))));
    }
}

void ShopTools::focusSearch() {
    m_search->setFocus();
    m_search->selectAll();
}

QString noneMatches() {
    return ShopWindow::tr("No record matches what is searched for and chosen above.");
}

void fitColumns(ShopTable& table) {
    const QFontMetrics metrics = table.fontMetrics();
    const int em = metrics.averageCharWidth();
    const auto* model = table.model();
    for (int column = 0; column < model->columnCount(); ++column) { // the file, the last, has what is left
        // No narrower than its name with the arrow of sorting, in the language that is spoken.
        const QString name = model->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        const int usual = listColumns()[static_cast<std::size_t>(column)].width * em;
        table.setColumnWidth(
            column, column == ShopModel::file ? usual : std::max(usual, metrics.horizontalAdvance(name) + 3 * em));
    }
    for (const auto& state : allWords<JobState>()) {
        const int width = metrics.horizontalAdvance(qtText(signedWord(state.value))) + 2 * em;
        table.setColumnWidth(ShopModel::state, std::max(table.columnWidth(ShopModel::state), width));
    }
    table.horizontalHeader()->restoreState(QSettings().value("shop/columns").toByteArray());
}

} // namespace caprail
