// SPDX-License-Identifier: GPL-3.0-or-later
/// Where the record of a session lies: whether it is still there, and how the session goes on in another file.
#include <session/record_session.h>

#include <session/now.h>
#include <store/care/copies.h>
#include <store/care/upgrade.h>
#include <store/file/path_text.h>

namespace caprail {

Result<QStringList> RecordSession::moveTo(const QString& path) {
    const auto saved = m_file.saveElsewhere(pathBytes(path));
    if (!saved) {
        return tl::unexpected(saved.error());
    }
    auto file = RecordFile::open(pathBytes(path), OpenMode::readWrite);
    if (!file) {
        return tl::unexpected(file.error());
    }
    m_file = std::move(*file);
    m_path = path;
    goneElsewhere();
    m_notice.clear();
    m_upgradeProblem.clear();
    QStringList sentences;
    for (const std::string& sentence : *saved) {
        sentences << QString::fromStdString(sentence);
    }
    storeUnstored();
    emit moved();
    emit changed();
    return sentences;
}

Result<QString> RecordSession::restoreFrom(const QString& copy) {
    const std::string kept = datedBackupName(m_file.path(), dateOf(now()));
    if (auto restored = m_file.restoreFrom(pathBytes(copy), kept); !restored) {
        return tl::unexpected(restored.error());
    }
    if (const auto older = olderVersion(m_file.path()); older && *older) {
        auto upgraded = upgradeRecord(m_file.path(), datedBackupName(m_file.path(), dateOf(now())));
        auto file = upgraded ? RecordFile::open(m_file.path(), OpenMode::readWrite) : tl::unexpected(upgraded.error());
        if (file) {
            m_file = std::move(*file);
        } else {
            m_upgradeProblem = QString::fromStdString(file.error().sentence);
        }
    }
    goneElsewhere();
    m_facts = fold(ledger());
    assessAnew();
    emit moved();
    emit changed();
    return QString::fromStdString(kept);
}

void RecordSession::lookAround() {
    if (m_probe->look(m_file.location(), !isReadOnly())) {
        m_writesAtLook = m_writes;
    }
}

void RecordSession::followSilence() {
    m_isSilent = true;
    setLost(tr("%1 does not answer. What is entered now waits here, and is stored as soon as it does.").arg(m_path));
}

void RecordSession::goneElsewhere() {
    m_probe->abandon();
    m_mark.reset();
    m_isSilent = false;
    m_lost.clear();
}

void RecordSession::setLost(const QString& why) {
    if (why != m_lost) {
        m_lost = why;
        why.isEmpty() ? emit fileFound() : emit fileLost(why);
    }
}

void RecordSession::follow(const LocationSeen& seen) {
    const bool wasSilent = m_isSilent;
    m_isSilent = false;
    m_isHeld = seen.isHeld;
    setLost(seen.lost);
    if (seen.lost.isEmpty()) {
        // Our own writes change the file too; what anybody else wrote between them, the next one of ours finds.
        if (m_writes != m_writesAtMark || m_mark == seen.mark || refresh()) {
            m_mark = seen.mark;
            m_writesAtMark = m_writesAtLook;
        }
        if (wasSilent && !m_unstored.empty()) {
            storeUnstored();
        }
    }
    emit lookedAround();
}

bool RecordSession::refresh() {
    const auto isNew = m_file.refresh();
    if (!isNew) {
        emit refused(QString::fromStdString(isNew.error().sentence));
        return false;
    }
    if (*isNew) {
        m_facts = fold(ledger());
        assessAnew();
        emit changed();
    }
    return true;
}

} // namespace caprail
