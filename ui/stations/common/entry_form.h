// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <functional>
#include <map>
#include <session/record_session.h>
#include <stations/common/entry_fields.h>
#include <string_view>
#include <text/label.h>

class QComboBox;
class QGridLayout;
class QLineEdit;
class QPushButton;

namespace caprail {

/// What a form shows of one field of an entry kind.
struct FormField {
    std::string_view field; ///< its name in the kind's description
    QString label;
    QString hint;            ///< shown while the field is empty
    QStringList suggestions; ///< to choose from; any other text may be typed
    bool isWide = false;     ///< takes a row of its own
};

/// A form whose Enter (or button) stores one entry. What a person typed stays until it is stored: a refusal shows its
/// sentence here and puts the keyboard on the field that it is about, and what others store meanwhile does not
/// overwrite it. Escape puts the recorded values back.
class EntryForm : public QWidget {
    Q_OBJECT
public:
    EntryForm(const QString& title, const QString& saveLabel, int columns, QWidget* parent);

    [[nodiscard]] bool isTouched() const { return m_isTouched; }
    /// Text of a field; empty for one that the form does not have.
    [[nodiscard]] QString text(std::string_view fieldName) const;
    /// As if a person typed it.
    void type(std::string_view fieldName, const QString& text);
    [[nodiscard]] QLineEdit* edit(std::string_view fieldName) const; ///< null for a field of fixed words
    [[nodiscard]] QComboBox* choice(std::string_view fieldName) const;
    void showProblem(const QString& sentence);
    [[nodiscard]] QString problem() const;
    /// Forgets what was typed, so that the next `load` shows the record again.
    void putBack();
    void focusField(std::string_view fieldName);
    /// Shows a field empty, for a value that is not known yet; as `load`, not over what a person typed.
    void clearField(std::string_view fieldName);
    /// A quiet line under the form.
    void setRemark(const QString& text);
    /// What stands in it may be stored as it is, though nothing was typed.
    void offerToStore();

public slots:
    void save();

signals:
    void edited();
    void saved();
    void reverted();

protected:
    void addField(const FormField& described, const QStringList& choices);
    void setText(std::string_view fieldName, const QString& text);
    void failAt(std::string_view fieldName) const { m_failed = fieldName; }
    [[nodiscard]] virtual Result<void> store() = 0;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void touch();
    [[nodiscard]] QWidget* widget(std::string_view fieldName) const;
    QGridLayout* m_grid;
    Label* m_message;
    QPushButton* m_save;
    QString m_remark, m_problem;
    int m_columns;
    int m_count = 0;
    bool m_isTouched = false;
    std::map<std::string_view, QWidget*> m_widgets;
    mutable std::string_view m_failed;
};

/// The form of one entry kind, made from the kind's own description. Fields that are not listed keep the value of the
/// entry that was loaded.
template <class S> class FormFor : public EntryForm {
public:
    FormFor(RecordSession& session, const QString& title, const QString& saveLabel,
            const std::vector<FormField>& fields, int columns, QWidget* parent)
        : EntryForm(title, saveLabel, columns, parent), m_session(session), m_fields(fields) {
        for (const FormField& asked : fields) {
            eachField([&](const auto& f) {
                if (f.name == asked.field) {
                    addField(asked, fieldChoices(S{}.*(f.member)));
                }
            });
        }
        load(S{});
    }

    /// Shows an entry's values, unless a person has typed something that is not stored yet.
    void load(const S& entry) {
        if (isTouched()) {
            return;
        }
        m_loaded = entry;
        eachField([&](const auto& f) { setText(f.name, fieldText(entry.*(f.member), m_session.units())); });
    }

    /// The entry as typed.
    [[nodiscard]] Result<S> read() const {
        S entry = m_loaded;
        Result<void> outcome;
        eachField([&](const auto& f) {
            const auto asked = std::find_if(m_fields.begin(), m_fields.end(),
                                            [&](const FormField& described) { return described.field == f.name; });
            if (!outcome || asked == m_fields.end()) {
                return;
            }
            const FieldContext context{m_session.units(), S::kind, f.name, "“" + asked->label.toStdString() + "”"};
            outcome = readField(entry.*(f.member), text(f.name), context);
            if (!outcome) {
                failAt(f.name);
            }
        });
        return outcome ? Result<S>(std::move(entry)) : tl::unexpected(outcome.error());
    }

protected:
    [[nodiscard]] Result<void> store() override {
        auto entry = read();
        if (!entry) {
            return tl::unexpected(entry.error());
        }
        const auto stored = m_session.append(Body(std::move(*entry)));
        return stored ? Result<void>() : Result<void>(tl::unexpected(stored.error()));
    }

private:
    template <class F> static void eachField(F&& each) {
        std::apply([&](const auto&... member) { (each(member), ...); }, S::fields());
    }
    RecordSession& m_session;
    std::vector<FormField> m_fields;
    S m_loaded;
};

} // namespace caprail
