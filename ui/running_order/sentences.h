#pragma once

#include <QStringList>
#include <QWidget>

#include "indexer/rules/running_order_check.h"

class QLabel;
class QVBoxLayout;

namespace quarterturn {

// What follows from the plan: who is late, and which rule is not kept, a line each with a mark
// before it.
class Sentences : public QWidget {
    Q_OBJECT
  public:
    explicit Sentences(QWidget* parent = nullptr);

    void show_consequences(const QString& heading, const Consequences& consequences);
    void show_heading(const QString& heading);  // and nothing else
    QStringList said() const;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QLabel* heading_;
    QLabel* well_;
    QVBoxLayout* lines_;
    std::vector<QLabel*> labels_;  // those without words are hidden
};

}  // namespace quarterturn
