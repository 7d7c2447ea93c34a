#pragma once

#include <QWidget>

namespace quarterturn {

// A place to write one part of a record. Each has `show_value(value)`, which tells nobody of a
// change, and `value()`.
class Field : public QWidget {
    Q_OBJECT
  public:
    using QWidget::QWidget;

    // What it is called, also by a screen reader.
    virtual void name_it(const QString& name) { setAccessibleName(name); }

  signals:
    void changed();
    void took_out(const QString& said);  // "removed a product": she may want it back

  protected:
    // Passes on what happens to a field within.
    void watch(const Field& inner);
};

}  // namespace quarterturn
