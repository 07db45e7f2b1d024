// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPushButton>

namespace caprail {

/// In the foot of a window, while there is something to say of publishing: what is being sent, what waits because the
/// database is away, what was refused. Pressed, it asks for the dialog that says all of it.
class PublishFoot : public QPushButton {
    Q_OBJECT
public:
    explicit PublishFoot(QWidget* parent = nullptr);

private:
    void refresh();
};

} // namespace caprail
