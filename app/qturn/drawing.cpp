#include "app/qturn/drawing.h"

#include <QGuiApplication>
#include <iostream>

namespace quarterturn {
namespace {

// Qt keeps references to both for as long as it runs.
int argument_count = 1;
char program_name[] = "qturn";
char* arguments[] = {program_name, nullptr};

// Qt remarks on the desktop, such as a missing XDG_RUNTIME_DIR; nothing is shown on it here.
void pass_on_failures(QtMsgType type, const QMessageLogContext&, const QString& message) {
    if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << message.toStdString() << '\n';
}

}  // namespace

Drawing::Drawing() {
    qInstallMessageHandler(pass_on_failures);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    application_ = std::make_unique<QGuiApplication>(argument_count, arguments);
}

Drawing::~Drawing() = default;

}  // namespace quarterturn
