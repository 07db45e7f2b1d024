// SPDX-License-Identifier: GPL-3.0-or-later
#include <session/language.h>

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QSettings>
#include <QTranslator>
#include <base/say.h>

namespace caprail {

namespace {

constexpr char setting[] = "language";

/// The catalogue, which names some contexts with their namespace and some without, as lupdate could tell: Qt asks with
/// the class's full name where it has a meta-object, and with what was declared where it has none.
class Catalogue : public QTranslator {
public:
    using QTranslator::QTranslator;

    QString translate(const char* context, const char* source, const char* disambiguation, int n) const override {
        const QString found = QTranslator::translate(context, source, disambiguation, n);
        if (!found.isEmpty()) {
            return found;
        }
        constexpr QByteArrayView house("caprail::");
        const QByteArray other = QByteArrayView(context).startsWith(house) ? QByteArray(context + house.size())
                                                                           : house.toByteArray() + context;
        return QTranslator::translate(other.constData(), source, disambiguation, n);
    }
};

std::string coreSentence(const char* source) {
    return QCoreApplication::translate("caprail::Core", source).toStdString();
}

/// The language of this run: set once, by `speak`.
QString& language() {
    static QString languageCode = QStringLiteral("en");
    return languageCode;
}

} // namespace

QStringList languages() {
    return {QStringLiteral("en"), QStringLiteral("de"), QStringLiteral("fr")};
}

QString spokenLanguage() {
    return language();
}

QString chosenLanguage() {
    return QSettings().value(setting).toString();
}

void keepChosenLanguage(const QString& languageCode) {
    QSettings().setValue(setting, languageCode);
}

QString languageFor(const QString& choice, const QLocale& desktop) {
    const QString wanted = choice.isEmpty() ? QLocale::languageToCode(desktop.language()) : choice;
    return languages().contains(wanted) ? wanted : languages().front();
}

void speak(const QString& languageCode) {
    QCoreApplication* const application = QCoreApplication::instance();
    auto* catalogue = new Catalogue(application);
    if (!catalogue->load(QStringLiteral(":/caprail/translations/caprail_%1.qm").arg(languageCode))) {
        return; // the source says it in English
    }
    language() = languageCode;
    auto* ofQt = new QTranslator(application);
    if (ofQt->load(QStringLiteral("qtbase_") + languageCode, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
        QCoreApplication::installTranslator(ofQt);
    }
    QCoreApplication::installTranslator(catalogue);
    if (languageCode != languages().front()) {
        Core::speak(coreSentence); // English has a catalogue only for «1 entry, 2 entries», which the core counts itself
    }
}

} // namespace caprail
