#pragma once

#include <QWidget>

class QLineEdit;

namespace quarterturn {

// Asks for a reason beside where it is needed: a field, a button that goes on with it, and one that
// doesn't. Nothing happens without a reason. Hidden until it asks. While she types, every key
// without Ctrl belongs to the field.
class ReasonField : public QWidget {
    Q_OBJECT
  public:
    ReasonField(const QString& question, const QString& go_on, QWidget* parent = nullptr);

    void ask();

  signals:
    void given(const QString& reason);
    void closed();  // with a reason or without

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void finish();
    void close_field();

    QLineEdit* field_;
};

}  // namespace quarterturn
