#include "app/qturn/drawing.h"

#include <QGuiApplication>

namespace quarterturn {
namespace {

// Qt keeps references to both for as long as it runs.
int argument_count = 1;
char program_name[] = "qturn";
char* arguments[] = {program_name, nullptr};

// Qt remarks on the desktop, such as a missing XDG_RUNTIME_DIR; nothing is shown on it here.
void ignore_remarks(QtMsgType, const QMessageLogContext&, const QString&) {}

}  // namespace

Drawing::Drawing() {
    qInstallMessageHandler(ignore_remarks);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    application_ = std::make_unique<QGuiApplication>(argument_count, arguments);
}

Drawing::~Drawing() = default;

}  // namespace quarterturn
