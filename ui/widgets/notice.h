#pragma once

#include <QFrame>

class QBoxLayout;
class QLabel;

namespace quarterturn {

// A sentence that stands beside where something went wrong or wants attention, with a mark before
// it. Hidden while it has nothing to say.
class Notice : public QFrame {
    Q_OBJECT
  public:
    explicit Notice(QWidget* parent = nullptr);

    void say(const QString& sentence);  // empty: hides
    QString said() const;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QLabel* text_;
};

// At the end of a column, saying this from the start.
void add_notice(QBoxLayout& column, const QString& sentence);

}  // namespace quarterturn
