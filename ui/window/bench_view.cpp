// SPDX-License-Identifier: GPL-3.0-or-later
#include <window/bench_view.h>

#include <QLineEdit>
#include <QShortcut>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <session/look.h>
#include <session/record_session.h>
#include <session/spoken_words.h>
#include <stations/common/entry_field.h>
#include <stations/common/place_name.h>
#include <stations/common/station.h>
#include <stations/common/station_text.h>
#include <text/label.h>
#include <window/bench_pad.h>

namespace caprail {

BenchView::BenchView(RecordSession& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_place(new Label(this)), m_last(new Label(this)),
      m_keys(new Label(tr("Enter stores and goes on · ↑ ↓ another place · Ctrl+Z strikes the last · Esc back"), this)),
      m_column(new QVBoxLayout), m_pad(new BenchPad(this)) {
    m_place->setObjectName(QStringLiteral("place"));
    m_last->setObjectName(QStringLiteral("storedLast"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    for (Label* label : {m_place, m_last, m_keys}) {
        label->setWordWrap(true);
    }
    m_keys->setForegroundRole(QPalette::PlaceholderText);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(48, 32, 24, 24);
    row->setSpacing(24);
    row->addLayout(m_column, 1);
    row->addWidget(m_pad);
    connect(m_pad, &BenchPad::strikeAsked, this, &BenchView::strikeAsked);
    connect(m_pad, &BenchPad::leaveAsked, this, &BenchView::leave);
    m_column->addWidget(m_place);
    m_column->addStretch(1);
    m_column->addStretch(1);
    m_column->addWidget(m_last);
    m_column->addStretch(1);
    m_column->addWidget(m_keys);
    auto* back = new QShortcut(Qt::Key_Escape, this);
    back->setContext(Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &BenchView::leave);
    connect(&session, &RecordSession::changed, this, &BenchView::follow);
    connect(&session, &RecordSession::stored, this, [this](qint64 sequence) {
        if (isActive()) { // out of sight it says nothing, to nobody
            m_last->setText(QStringLiteral("✓ ") + spokenWords(m_session.ledger().at(sequence), m_session.units()));
        }
    });
}

BenchView::~BenchView() {
    returnField();
}

EntryField* BenchView::field() const {
    return m_field;
}

void BenchView::tell(const QString& sentence) {
    m_last->setText(sentence);
}

bool BenchView::enter(StationPanel* station) {
    if (station == nullptr || station->entryField() == nullptr) {
        return false;
    }
    m_station = station;
    m_last->clear();
    connect(station, &StationPanel::subjectChanged, this, &BenchView::follow);
    follow();
    return true;
}

void BenchView::take(EntryField* entryField) {
    returnField();
    lend(entryField, m_gap);
    m_field = entryField;
    m_pad->typeInto(entryField);
    m_column->insertWidget(2, entryField);
    entryField->show();
    takePicture();
    scale();
    entryField->setFocus();
}

void BenchView::takePicture() {
    QWidget* picture = m_station == nullptr ? nullptr : m_station->benchPicture();
    m_place->setVisible(picture == nullptr);
    if (picture == nullptr) {
        return;
    }
    lend(picture, m_pictureGap);
    m_picture = picture;
    m_column->insertWidget(0, picture, 100);
    picture->show();
}

void BenchView::lend(QWidget* widget, QPointer<QWidget>& gap) {
    QWidget* owner = widget->parentWidget();
    gap = new QWidget(owner);
    delete owner->layout()->replaceWidget(widget, gap);
}

void BenchView::putBack(QWidget* widget, QPointer<QWidget>& gap) {
    m_column->removeWidget(widget);
    delete gap->parentWidget()->layout()->replaceWidget(gap, widget);
    widget->show();
    delete gap;
}

void BenchView::returnField() {
    if (m_field && m_gap) {
        m_field->setScale(1);
        putBack(m_field, m_gap);
    }
    if (m_picture && m_pictureGap) {
        putBack(m_picture, m_pictureGap);
    }
    m_field = nullptr;
    m_pad->typeInto(nullptr);
    m_picture = nullptr;
    m_place->show();
}

void BenchView::leave() {
    if (m_station == nullptr) {
        return;
    }
    disconnect(m_station, nullptr, this, nullptr);
    returnField();
    m_station = nullptr;
    emit left();
}

/// Another place may be asked for, or by another field of the station.
void BenchView::follow() {
    if (m_station == nullptr) {
        return;
    }
    EntryField* now = m_station->entryField();
    if (now == nullptr) {
        leave();
        return;
    }
    if (now != m_field) {
        take(now);
    }
    m_pad->showWords(m_station->benchWords());
    m_place->setText(m_station->subject().isEmpty() ? qtShown(m_station->station())
                                                    : capitalised(placeName(m_station->subject())));
}

void BenchView::scale() {
    const double em = std::min(height() / 34.0, width() / 50.0);
    const auto sized = [&](double factor, bool isBold) {
        QFont font = this->font();
        font.setPixelSize(std::max(9, static_cast<int>(em * factor)));
        font.setBold(isBold);
        return font;
    };
    m_place->setFont(sized(4, true));
    m_last->setFont(sized(2.2, false));
    m_keys->setFont(sized(1, false));
    if (m_field) {
        // In points: one em of this view against the usual one.
        m_field->setScale(std::max(1.0, 2.2 * em / QFontMetrics(font()).height()));
    }
}

void BenchView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    scale();
}

} // namespace caprail
