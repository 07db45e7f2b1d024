// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/preferences_dialog.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <algorithm>
#include <publishing/publish_dialog.h>
#include <session/filled.h>
#include <session/language.h>
#include <session/picture.h>
#include <text/ask.h>
#include <text/label.h>
#include <text/plain_text.h>
#include <tuple>

namespace caprail {

namespace {

template <class Value> QComboBox* choice(std::initializer_list<std::pair<QString, Value>> entries, Value current) {
    auto* box = new QComboBox;
    for (const auto& [text, value] : entries) {
        box->addItem(text, static_cast<int>(value));
    }
    box->setCurrentIndex(box->findData(static_cast<int>(current)));
    return box;
}

template <class Value> Value chosen(const QComboBox* box) {
    return static_cast<Value>(box->currentData().toInt());
}

} // namespace

PreferencesDialog::PreferencesDialog(const Preferences& p, QWidget* parent)
    : QDialog(parent), m_publishing(PublishSettings::load()),
      m_length(choice<LengthUnit>({{tr("inch"), LengthUnit::inch}, {tr("millimetre"), LengthUnit::millimetre}},
                                  p.units.length)),
      m_torque(choice<TorqueUnit>({{QStringLiteral("lbf·ft"), TorqueUnit::poundFoot},
                                   {QStringLiteral("lbf·in"), TorqueUnit::poundInch},
                                   {QStringLiteral("N·m"), TorqueUnit::newtonMetre}},
                                  p.units.torque)),
      m_mark(choice<char>({{tr("point: 0.0575"), '.'}, {tr("comma: 0,0575"), ','}}, p.units.decimalMark)),
      m_look(choice<LookChoice>({{tr("like the desktop"), LookChoice::system},
                                 {tr("light"), LookChoice::light},
                                 {tr("dark"), LookChoice::dark},
                                 {tr("high contrast"), LookChoice::contrast}},
                                p.look)),
      m_textSize(new QComboBox), m_language(new QComboBox),
      m_confirmation(choice<ConfirmationChoice>({{tr("on the screen only"), ConfirmationChoice::silent},
                                                 {tr("with the bell, twice for a refusal"), ConfirmationChoice::sound},
                                                 {tr("spoken"), ConfirmationChoice::spoken}},
                                                p.confirmation)),
      m_paper(choice<QPageSize::PageSizeId>(
          {{QStringLiteral("A4"), QPageSize::A4}, {QStringLiteral("Letter"), QPageSize::Letter}}, p.paper)),
      m_schedule(scheduleChoice(m_publishing.schedule)), m_shop(new QLineEdit(p.shopName)),
      m_logo(new QLineEdit(p.logoPath)), m_database(new QLineEdit(m_publishing.service)), m_smallFrom(new QSpinBox),
      m_smallTo(new QSpinBox), m_bigNear(new QSpinBox) {
    setWindowTitle(tr("Preferences"));
    auto* browse = new QPushButton(tr("Choose…"));
    auto* logoRow = new QHBoxLayout;
    logoRow->addWidget(m_logo, 1);
    logoRow->addWidget(browse);
    connect(browse, &QPushButton::clicked, this, [this] {
        const QString path =
            QFileDialog::getOpenFileName(this, tr("Shop logo"), {}, filled(tr("Pictures (%1)"), readablePictures()));
        if (!path.isEmpty()) {
            m_logo->setText(path);
        }
    });
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* form = new QFormLayout(this);
    addRow(form, tr("&Lengths in"), m_length);
    addRow(form, tr("Tor&ques in"), m_torque);
    addRow(form, tr("&Decimal mark"), m_mark);
    addRow(form, tr("L&ook"), m_look);
    for (const int percent : textSizes) {
        m_textSize->addItem(tr("%1 %").arg(percent), percent);
    }
    m_textSize->setCurrentIndex(m_textSize->findData(p.textSize));
    addRow(form, tr("Te&xt size (in full from the next start)"), m_textSize);
    const QStringList names{tr("like the desktop"), QStringLiteral("English"), QStringLiteral("Deutsch"),
                            QStringLiteral("Français")};
    const QStringList codes = QStringList{QString()} + languages();
    for (qsizetype i = 0; i < codes.size(); ++i) {
        m_language->addItem(names[i], codes[i]);
    }
    m_language->setCurrentIndex(std::max(0, m_language->findData(p.language)));
    setTip(m_language, tr("Spoken from the next start of the program."));
    addRow(form, tr("Lan&guage (from the next start)"), m_language);
    addRow(form, tr("&Entries are confirmed"), m_confirmation);
    addRow(form, tr("P&aper"), m_paper);
    addRow(form, tr("&Shop name on the sheet"), m_shop);
    const auto addLayout = [form](const QString& text, QWidget* buddy, QHBoxLayout* row) {
        auto* label = new Label(text);
        label->setBuddy(buddy);
        form->addRow(label, row);
    };
    addLayout(tr("Sho&p logo"), m_logo, logoRow);
    m_database->setPlaceholderText(PublishDialog::tr("shop, or postgresql://bench@server/caprail"));
    setTip(m_database, tr("A service of ~/.pg_service.conf, or an address without a password: Shop ▸ Publish."));
    addRow(form, tr("S&hop's database"), m_database);
    setTip(m_schedule, tr("Records that were added to on this computer are sent by themselves."));
    addRow(form, tr("P&ublish by itself"), m_schedule);
    auto* advice = new QHBoxLayout;
    for (const auto& [label, box, value] : {std::tuple{tr("from"), m_smallFrom, p.advice.smallBlockFrom},
                                            {tr("to"), m_smallTo, p.advice.smallBlockTo},
                                            {tr("big-block near"), m_bigNear, p.advice.bigBlockNear}}) {
        box->setRange(1, 5000);
        box->setValue(value);
        box->setSuffix(tr(" hp"));
        box->setAccessibleName(tr("Consider a girdle, %1").arg(label));
        advice->addWidget(new Label(label));
        advice->addWidget(box);
    }
    addLayout(tr("Consider a girdle o&n a small-block"), m_smallFrom, advice);
    form->addRow(buttons);
}

void PreferencesDialog::accept() {
    const PublishSettings wished{m_database->text().trimmed(), chosen<PublishSchedule>(m_schedule)};
    if (wished != m_publishing) { // else what another window changed meanwhile would be undone
        if (const auto kept = wished.save(); !kept) {
            warn(this, tr("Preferences"), QString::fromStdString(kept.error().sentence));
            m_database->setFocus();
            return;
        }
    }
    QDialog::accept();
}

Preferences PreferencesDialog::preferences() const {
    Preferences p;
    p.units = {chosen<LengthUnit>(m_length), chosen<TorqueUnit>(m_torque), chosen<char>(m_mark)};
    p.look = chosen<LookChoice>(m_look);
    p.textSize = m_textSize->currentData().toInt();
    p.language = m_language->currentData().toString();
    p.paper = chosen<QPageSize::PageSizeId>(m_paper);
    p.shopName = m_shop->text().trimmed();
    p.logoPath = m_logo->text().trimmed();
    p.confirmation = chosen<ConfirmationChoice>(m_confirmation);
    p.advice = {m_smallFrom->value(), std::max(m_smallFrom->value(), m_smallTo->value()), m_bigNear->value()};
    return p;
}

} // namespace caprail
