// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <stations/common/entry_fields.h>

class QLineEdit;

namespace caprail {

class EntryField;

/// A small field beside the one that takes a reading, for what may be said with it: it may stay empty, it is no stop on
/// the way of who does not use it, and Enter in it stores the reading as Enter in the main field does. A value that is
/// the same for all readings of one place stays until another place is asked for; it is never taken over to that.
class OptionalField : public QWidget {
    Q_OBJECT
public:
    OptionalField(const QString& label, const QString& hint, EntryField* main);
    /// The part's temperature, which goes with a length that is read.
    static OptionalField* partTemperature(EntryField* main);
    [[nodiscard]] QLineEdit* lineEdit() const { return m_edit; }
    /// Empties it where the place is another than before.
    void follow(const QString& place);
    void clear();
    /// Reads what stands in it; nothing where it is empty. Refuses as `readField` does, naming the field.
    template <class Q> Result<void> read(Rare<Entered<Q>>& into, const Units& units, std::string_view kind,
                                         std::string_view field) const {
        return readField(into, text(), FieldContext{units, kind, field, "“" + coreText(m_label) + "”"});
    }

private:
    [[nodiscard]] QString text() const;
    QString m_label, m_place;
    QLineEdit* m_edit;
};

} // namespace caprail
