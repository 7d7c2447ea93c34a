#pragma once

#include <QTranslator>

namespace quarterturn {

// English plurals. A text for tr() with a number writes its plural as "(s)", as Qt's own examples
// do: "%n photo(s)" is shown as "1 photo" and "12 photos". Translations into other languages have
// plural forms of their own and are installed after this one, so that they are asked first.
class PlainEnglish : public QTranslator {
    Q_OBJECT
  public:
    using QTranslator::QTranslator;

    QString translate(const char* context, const char* text, const char* disambiguation,
                      int number) const override;
    bool isEmpty() const override { return false; }
};

}  // namespace quarterturn
