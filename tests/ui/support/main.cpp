// Widgets are real, the screen is not: tests run on Qt's offscreen platform, with settings of their
// own that are gone afterwards.

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "indexer/intake/threads.h"
#include "ui/theme/theme.h"
#include "ui/widgets/plain_english.h"

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    const quarterturn::OneThreadEach as_the_program;
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("quarterturn-tests"));
    QApplication::setApplicationName(QStringLiteral("quarterturn-tests"));
    quarterturn::PlainEnglish english;
    QApplication::installTranslator(&english);
    quarterturn::apply_theme(application, {});
    return RUN_ALL_TESTS();
}
