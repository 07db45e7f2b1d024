// SPDX-License-Identifier: GPL-3.0-or-later
#include <stations/common/entry_field.h>

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QIcon>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>
#include <session/announcer.h>
#include <session/filled.h>
#include <session/look.h>
#include <session/storing_press.h>
#include <stations/common/instrument_box.h>
#include <text/label.h>
#include <text/plain_text.h>

namespace caprail {

namespace {

/// The sign of the Enter key, in this ink.
QIcon enterSign(const QColor& ink) {
    QIcon icon;
    for (const int size : {16, 32, 64}) {
        QPixmap pixmap(size, size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(size / 16.0, size / 16.0);
        painter.setPen(QPen(ink, 1.5, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.drawPolyline(QPolygonF({{13, 4}, {13, 10}, {3.5, 10}}));
        painter.drawPolyline(QPolygonF({{6.5, 7}, {3.5, 10}, {6.5, 13}}));
        icon.addPixmap(pixmap);
    }
    return icon;
}

/// A line edit takes the keys of undoing and of emptying the line (Ctrl+Z, Ctrl+U) for itself. Here Ctrl+Z undoes what
/// is being typed, and once nothing is, it strikes the last entry, as everywhere; Ctrl+U is the program's. Esc empties the
/// field, and once it is empty, it is the program's too.
class ValueEdit : public QLineEdit {
public:
    using QLineEdit::QLineEdit;

protected:
    bool event(QEvent* event) override {
        if (event->type() == QEvent::ShortcutOverride) {
            const auto& key = *static_cast<QKeyEvent*>(event);
            const bool isUnits = key.key() == Qt::Key_U && key.modifiers() == Qt::ControlModifier;
            if (isUnits || (text().isEmpty() && key.matches(QKeySequence::Undo))) {
                event->ignore();
                return true;
            }
            if (key.key() == Qt::Key_Escape && !text().isEmpty()) {
                event->accept();
                return true;
            }
        }
        return QLineEdit::event(event);
    }
    void keyPressEvent(QKeyEvent* event) override {
        if (event->key() == Qt::Key_Escape && !text().isEmpty()) {
            setText({});
            return;
        }
        QLineEdit::keyPressEvent(event);
    }
};

} // namespace

EntryField::EntryField(QWidget* parent)
    : QWidget(parent), m_title(new Label(this)), m_edit(new ValueEdit(this)), m_unit(new Label(this)),
      m_echo(new Label(this)), m_enter(m_edit->addAction(enterSign(screenLook().quiet), QLineEdit::TrailingPosition)) {
    // For whoever has no keyboard at hand: a screen reader, dictation, a finger. Not on the way of the Tab key.
    m_enter->setText(tr("Enter this value"));
    connect(m_enter, &QAction::triggered, this, &EntryField::submit);
    m_title->setWordWrap(true);
    m_title->setBuddy(m_edit);
    m_echo->setObjectName(QStringLiteral("echo"));
    m_echo->setWordWrap(true);
    setScale(1);
    m_echo->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_echo->setTextInteractionFlags(Qt::TextSelectableByMouse);

    auto* row = new QHBoxLayout;
    row->addWidget(m_edit, 1);
    row->addWidget(m_unit);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_title);
    column->addLayout(row);
    column->addWidget(m_echo);
    setFocusProxy(m_edit);

    // Changed, not edited: dictation and screen readers set the text without a key.
    connect(m_edit, &QLineEdit::textChanged, this, &EntryField::showEcho);
    connect(m_edit, &QLineEdit::returnPressed, this, &EntryField::submit);
}

void EntryField::setScale(qreal scale) {
    QFont plain = font();
    plain.setPointSizeF(plain.pointSizeF() * scale);
    QFont bold = plain;
    bold.setBold(true);
    QFont large = plain;
    large.setPointSizeF(large.pointSizeF() * 1.8);
    m_edit->setFont(large);
    m_edit->setMinimumWidth(QFontMetrics(large).horizontalAdvance(QStringLiteral("22+23+12.5 thou")));
    m_unit->setFont(large);
    m_title->setFont(bold);
    m_echo->setFont(plain);
    m_echo->setMinimumHeight(QFontMetrics(plain).lineSpacing() * 2);
}

QString EntryField::title() const {
    return m_titleText;
}

void EntryField::ask(const QString& title, const QString& unit, Reader reader, Submit submit) {
    m_titleText = title;
    m_title->setText(literal(title)); // it has a buddy, and no key
    m_unit->setText(unit);
    m_unit->setVisible(!unit.isEmpty());
    if (const QString name = unit.isEmpty() ? title : title + QStringLiteral(", ") + unit;
        name != m_edit->accessibleName()) {
        m_edit->setAccessibleName(name); // each name that is set is told
    }
    m_reader = std::move(reader);
    m_submit = std::move(submit);
    if (!m_showsProblem) {
        showEcho();
    }
}

void EntryField::askLength(const QString& title, const Units& units, const Expected<Length>& expected,
                           std::function<Result<void>(const Entered<Length>&)> take) {
    const LengthReader read = [units, expected](const std::string& text) { return parseLength(text, units, expected); };
    askLength(title, units, read, std::move(take));
}

void EntryField::askLength(const QString& title, const Units& units, const LengthReader& read,
                           std::function<Result<void>(const Entered<Length>&)> take) {
    ask(
        title, QString::fromUtf8(symbol(units.length)),
        [read, units](const QString& text) {
            return read(text.toStdString()).map([&](const Entered<Length>& length) {
                const LengthUnit other = units.length == LengthUnit::inch ? LengthUnit::millimetre : LengthUnit::inch;
                return QString::fromStdString(format(length.value, units) + "  =  " +
                                              format(length.value, other, units.decimalMark));
            });
        },
        [read, take = std::move(take)](const QString& text) -> Result<void> {
            const auto value = read(text.toStdString());
            return value ? take(*value) : Result<void>(tl::unexpected(value.error()));
        });
}

void EntryField::askTorque(const QString& title, const Units& units, const Expected<Torque>& expected,
                           std::function<Result<void>(const Entered<Torque>&)> take) {
    const auto read = [units, expected](const QString& text) {
        return parseTorque(text.toStdString(), units, expected);
    };
    ask(
        title, QString::fromUtf8(symbol(units.torque)),
        [read, units](const QString& text) {
            return read(text).map([&](const Entered<Torque>& torque) {
                Units other = units;
                other.torque =
                    units.torque == TorqueUnit::newtonMetre ? TorqueUnit::poundFoot : TorqueUnit::newtonMetre;
                return QString::fromStdString(format(torque.value, units) + "  =  " + format(torque.value, other));
            });
        },
        [read, take = std::move(take)](const QString& text) -> Result<void> {
            const auto value = read(text);
            return value ? take(*value) : Result<void>(tl::unexpected(value.error()));
        });
}

void EntryField::askAngle(const QString& title, const Units& units, const Expected<Angle>& expected,
                          std::function<Result<void>(const Entered<Angle>&)> take) {
    const auto read = [units, expected](const QString& text) {
        return parseAngle(text.toStdString(), units, expected);
    };
    ask(
        title, QStringLiteral("°"),
        [read, units](const QString& text) {
            return read(text).map(
                [&](const Entered<Angle>& angle) { return QString::fromStdString(format(angle.value, units)); });
        },
        [read, take = std::move(take)](const QString& text) -> Result<void> {
            const auto value = read(text);
            return value ? take(*value) : Result<void>(tl::unexpected(value.error()));
        });
}

void EntryField::showEcho() {
    m_showsProblem = false;
    const QString text = m_edit->text();
    QString echo;
    if (!text.trimmed().isEmpty() && m_reader) {
        const auto read = m_reader(text);
        // While typing, what cannot be read yet is no fault: the sentence comes with Enter.
        echo = read ? tr("Read as %1").arg(*read) : QStringLiteral("…");
    }
    m_echo->setText(echo);
    if (echo != m_edit->accessibleDescription()) {
        m_edit->setAccessibleDescription(echo);
    }
    QPalette palette = m_echo->palette();
    palette.setColor(QPalette::WindowText, screenLook().quiet);
    m_echo->setPalette(palette);
}

void EntryField::showProblem(const QString& sentence) {
    m_showsProblem = true;
    m_echo->setText(QStringLiteral("✕ ") + sentence);
    m_edit->setAccessibleDescription(sentence);
    Announcer::instance().say(sentence);
    QPalette palette = m_echo->palette();
    palette.setColor(QPalette::WindowText, screenLook().out);
    m_echo->setPalette(palette);
    m_edit->setFocus();
    m_edit->selectAll();
}

void EntryField::submit() {
    if (!m_submit) {
        return;
    }
    const QString typed = m_edit->text();
    if (const auto question = StoringPress::askedBack(typed)) {
        clear(); // a single key answers again only in an empty field
        showProblem(*question);
        return;
    }
    // A copy: taking the value may ask for the next place, which replaces `m_submit` while it runs.
    const Submit take = m_submit;
    const auto taken = take(typed);
    StoringPress::answered(typed, taken);
    if (!taken) {
        // What is kept must not be given twice by another Enter: it is in the bar over the record, the field is free.
        if (taken.error().isKept) {
            clear();
        }
        showProblem(QString::fromStdString(taken.error().sentence));
    } else {
        clear();
    }
}

void EntryField::takeFromGauge(const QString& text, const QString& instrument) {
    if (!m_showsProblem && !m_edit->text().trimmed().isEmpty()) {
        showProblem(filled(tr("%1 came from the gauge, but “%2” stands here and is not stored: store it with Enter or empty "
                              "the field with Esc, then press the gauge's button again."),
                           text, m_edit->text()));
        return;
    }
    InstrumentBox* box = m_chooser ? m_chooser() : nullptr;
    if (box != nullptr && !instrument.isEmpty() && !box->choose(instrument)) {
        m_edit->setText(text);
        showProblem(filled(tr("%1 came from “%2”, which this record does not know: add it at the engine station, under the "
                              "same name, or say under Instruments ▸ Gauges on this computer which instrument it is."),
                           text, instrument));
        return;
    }
    type(text);
    submit();
}

QString EntryField::text() const {
    return m_edit->text();
}
QString EntryField::problem() const {
    return m_showsProblem ? m_echo->text() : QString();
}

void EntryField::type(const QString& text) {
    m_edit->setFocus();
    m_edit->setText(text);
    showEcho();
}

void EntryField::clear() {
    m_edit->setText({}); // unlike clear(), which would keep the stored text for the next undo, at the next place
    showEcho();
}

void EntryField::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        m_enter->setIcon(enterSign(screenLook().quiet));
        if (!m_showsProblem) {
            showEcho();
        }
    }
}

} // namespace caprail
