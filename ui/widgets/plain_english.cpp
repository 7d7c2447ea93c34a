#include "ui/widgets/plain_english.h"

namespace quarterturn {

QString PlainEnglish::translate(const char*, const char* text, const char*, int number) const {
    const QString plural_mark = QStringLiteral("(s)");
    QString english = QString::fromUtf8(text);
    if (number < 0 || !english.contains(plural_mark)) return {};
    return english.replace(plural_mark, number == 1 ? QString() : QStringLiteral("s"));
}

}  // namespace quarterturn
