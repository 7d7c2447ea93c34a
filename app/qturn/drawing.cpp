#include "app/qturn/drawing.h"

#include <QGuiApplication>

namespace quarterturn {
namespace {

// Qt keeps references to both for as long as it runs.
int argument_count = 1;
char program_name[] = "qturn";
char* arguments[] = {program_name, nullptr};

}  // namespace

Drawing::Drawing() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    application_ = std::make_unique<QGuiApplication>(argument_count, arguments);
}

Drawing::~Drawing() = default;

}  // namespace quarterturn
