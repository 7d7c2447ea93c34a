#pragma once

#include <QString>
#include <utility>
#include <vector>

class QLayout;
class QWidget;

namespace quarterturn {

// Fields beside each other in equal parts, each under its name, which a screen reader says too.
QLayout* make_named_fields(const std::vector<std::pair<QString, QWidget*>>& fields);

}  // namespace quarterturn
