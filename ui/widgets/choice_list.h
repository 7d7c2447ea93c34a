#pragma once

#include <QFrame>
#include <QStringList>

class QLineEdit;
class QListWidget;

namespace quarterturn {

// A list to choose one thing from, which opens below a button and goes when she has chosen. A long
// one has a field to type part of a name in.
class ChoiceList : public QFrame {
    Q_OBJECT
  public:
    ChoiceList(const QString& name, const QStringList& entries, QWidget* parent);

    void open_below(const QWidget& button);

  signals:
    void chosen(int entry);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void narrow(const QString& part);
    void choose();

    QLineEdit* part_;
    QListWidget* list_;
};

// Puts a popup below a button, inside the screen.
void place_below(QWidget& popup, const QWidget& button);

}  // namespace quarterturn
