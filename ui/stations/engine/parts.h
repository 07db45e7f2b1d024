// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <stations/common/entry_form.h>
#include <tables/table.h>

namespace caprail {

/// What the engine is built from: maker, number, serial, lot, stamped number, new or used, what was machined. A photo of
/// the number is taken with a part that was stored.
class EngineParts : public QWidget {
    Q_OBJECT
public:
    explicit EngineParts(RecordSession& session, QWidget* parent = nullptr);
    void refresh();
    void selectFirst();

private:
    void showPart();
    void addPhoto();
    RecordSession& m_session;
    Table<Seen<PartEntered>, std::string>* m_table;
    FormFor<PartEntered>* m_form;
    QPushButton* m_photo;
};

} // namespace caprail
