// SPDX-License-Identifier: GPL-3.0-or-later
#include <publishing/publish_dialog.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <ledger/qt_text.h>
#include <publishing/publisher.h>
#include <session/filled.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

constexpr int mostTold = 1000; ///< lines that are kept

} // namespace

QComboBox* scheduleChoice(PublishSchedule current) {
    auto* box = new QComboBox;
    for (const auto& one : allWords<PublishSchedule>()) {
        box->addItem(qtShown(one.value), static_cast<int>(one.value));
    }
    box->setCurrentIndex(box->findData(static_cast<int>(current)));
    return box;
}

PublishDialog::PublishDialog(const QString& record, const QString& folder, QWidget* parent)
    : QDialog(parent), m_service(new QLineEdit), m_what(new QComboBox),
      m_schedule(scheduleChoice(PublishSettings::load().schedule)), m_state(new Label), m_progress(new QProgressBar),
      m_told(new QPlainTextEdit), m_publish(nullptr), m_stop(nullptr) {
    setWindowTitle(tr("Publish"));
    setObjectName(QStringLiteral("publishDialog"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_what->setObjectName(QStringLiteral("publishWhat"));
    m_what->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    offer(record, folder);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("How much of the record is sent"));
    m_state->setObjectName(QStringLiteral("publishState"));
    m_state->setWordWrap(true);
    m_told->setObjectName(QStringLiteral("publishTold"));
    m_told->setReadOnly(true);
    m_told->setMaximumBlockCount(mostTold);
    m_told->setTabChangesFocus(true);
    m_told->setAccessibleName(tr("What came of each record"));
    auto* page = new QVBoxLayout(this);
    page->addLayout(makeForm());
    page->addWidget(m_told, 1);
    page->addWidget(m_state);
    page->addWidget(m_progress);
    page->addWidget(makeButtons());

    connect(m_schedule, &QComboBox::activated, this, &PublishDialog::keep);
    connect(&Publisher::instance(), &Publisher::changed, this, &PublishDialog::refresh);
    connect(&Publisher::instance(), &Publisher::told, this, &PublishDialog::tell);
    for (const QString& sentence : Publisher::instance().state().refused) {
        tell(sentence);
    }
    refresh();
}

QFormLayout* PublishDialog::makeForm() {
    const PublishSettings settings = PublishSettings::load();
    m_service->setObjectName(QStringLiteral("publishService"));
    m_service->setText(settings.service);
    m_service->setPlaceholderText(tr("shop, or postgresql://bench@server/caprail"));
    m_service->setMinimumWidth(fontMetrics().averageCharWidth() * 48);
    setTip(m_schedule, tr("Records that were added to on this computer are sent by themselves."));
    m_schedule->setObjectName(QStringLiteral("publishSchedule"));
    auto* choose = new QPushButton(tr("&Folder…"));
    choose->setAutoDefault(false);
    connect(choose, &QPushButton::clicked, this, &PublishDialog::chooseFolder);
    auto* what = new QHBoxLayout;
    what->addWidget(m_what, 1);
    what->addWidget(choose);

    auto* form = new QFormLayout;
    addRow(form, tr("&Database"), m_service);
    auto* advice =
        new Label(tr("A service of ~/.pg_service.conf, or an address. A password belongs into ~/.pgpass or the "
                     "service file."));
    advice->setWordWrap(true);
    form->addRow(QString(), advice);
    auto* label = new Label(tr("&What"));
    label->setBuddy(m_what);
    form->addRow(label, what);
    addRow(form, tr("Publish by &itself"), m_schedule);
    return form;
}

QDialogButtonBox* PublishDialog::makeButtons() {
    auto* buttons = new QDialogButtonBox;
    m_publish = buttons->addButton(tr("&Publish"), QDialogButtonBox::ActionRole);
    m_stop = buttons->addButton(tr("&Stop"), QDialogButtonBox::ActionRole);
    auto* close = buttons->addButton(QDialogButtonBox::Close);
    m_publish->setObjectName(QStringLiteral("publishNow"));
    m_stop->setObjectName(QStringLiteral("publishStop"));
    m_publish->setDefault(true);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    connect(m_publish, &QPushButton::clicked, this, &PublishDialog::publish);
    connect(m_stop, &QPushButton::clicked, &Publisher::instance(), &Publisher::stop);
    return buttons;
}

void PublishDialog::offer(const QString& record, const QString& folder) {
    m_what->clear();
    if (!record.isEmpty()) {
        m_what->addItem(filled(tr("this record, %1"), QFileInfo(record).fileName()), record);
    }
    for (const QString& one : QStringList{folder} + m_chosen) {
        if (!one.isEmpty()) {
            offerFolder(one);
        }
    }
    m_what->setCurrentIndex(m_what->count() > 0 ? 0 : -1);
}

void PublishDialog::offerFolder(const QString& folder) {
    int at = m_what->findData(folder);
    if (at < 0) {
        m_what->addItem(filled(tr("the records of %1"), folder), folder);
        at = m_what->count() - 1;
    }
    m_what->setCurrentIndex(at);
}

void PublishDialog::chooseFolder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder of records"));
    if (!folder.isEmpty()) {
        m_chosen << folder;
        offerFolder(folder);
    }
}

void PublishDialog::tell(const QString& sentence) {
    m_told->appendPlainText(visible(sentence));
}

bool PublishDialog::keep() {
    const auto kept =
        PublishSettings{m_service->text().trimmed(), static_cast<PublishSchedule>(m_schedule->currentData().toInt())}
            .save();
    if (!kept) {
        tell(qtText(kept.error().sentence));
        m_service->setFocus();
    }
    return kept.has_value();
}

void PublishDialog::reject() {
    const QString typed = m_service->text().trimmed();
    if (typed != PublishSettings::load().service && typed != m_refused && !keep()) {
        m_refused = typed;
        return;
    }
    QDialog::reject();
}

void PublishDialog::publish() {
    if (!keep()) {
        return;
    }
    if (m_what->count() == 0) {
        chooseFolder();
    }
    if (m_what->count() > 0) {
        if (const QString problem = Publisher::instance().publish({m_what->currentData().toString()});
            !problem.isEmpty()) {
            tell(problem);
        }
    }
}

void PublishDialog::refresh() {
    const Publisher& publisher = Publisher::instance();
    const Publisher::State& state = publisher.state();
    const QString sentence = publisher.sentence();
    m_state->setText(joined({state.away, state.notNoted, sentence}, QStringLiteral("\n")));
    m_progress->setVisible(state.isRunning);
    m_progress->setRange(0, 100);
    m_progress->setValue(state.perCent);
    m_publish->setEnabled(!state.isRunning);
    m_stop->setEnabled(state.isRunning || !state.away.isEmpty());
}

void showPublishDialog(const QString& record, const QString& folder, QWidget* window) {
    auto* dialog = window->findChild<PublishDialog*>();
    if (dialog == nullptr) {
        dialog = new PublishDialog(record, folder, window);
        dialog->resize(dialog->sizeHint());
    } else {
        dialog->offer(record, folder);
    }
    dialog->show();
    dialog->raise();
    dialog->activateWindow();
}

} // namespace caprail
