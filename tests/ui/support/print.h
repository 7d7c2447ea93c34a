#pragma once
// Lets GoogleTest print Qt's texts as texts. In the global namespace, where QString lives.

#include <QString>
#include <ostream>

inline void PrintTo(const QString& text, std::ostream* out) {
    *out << '"' << text.toStdString() << '"';
}
