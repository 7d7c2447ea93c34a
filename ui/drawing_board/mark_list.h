#pragma once

#include <QWidget>
#include <vector>

#include "indexer/record/recipe/head_drawing.h"

class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace quarterturn {

// The marks of a drawing by their numbers, each with a field for its words.
class MarkList : public QWidget {
    Q_OBJECT
  public:
    explicit MarkList(QWidget* parent = nullptr);

    void show_marks(const std::vector<PlanMark>& marks);
    void write_at(int number);  // gives the keyboard to the words of this mark

  signals:
    void written(int number, const QString& words);
    void done();  // Enter in a field

  private:
    struct Row {
        int number;
        QLineEdit* words;
    };
    void build_rows(const std::vector<PlanMark>& marks);
    QWidget* make_mark_row(int number);

    QLabel* none_;
    QVBoxLayout* column_;
    std::vector<Row> rows_;
};

}  // namespace quarterturn
