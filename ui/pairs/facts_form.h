#pragma once

#include <QWidget>
#include <map>

#include "indexer/record/look_facts.h"
#include "indexer/store/library.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class Session;

// What a look is found by: what its recipe says, and what she says herself, which goes before.
class FactsForm : public QWidget {
    Q_OBJECT
  public:
    explicit FactsForm(Session& session, QWidget* parent = nullptr);

    void show_look(LookId look);

  private:
    struct Row {
        QLineEdit* values;
        QLabel* source;
        QPushButton* as_read;
        QString shown;
    };

    void add(QVBoxLayout& column, Fact fact);
    void show_fact(Fact fact, const LookFacts& facts);
    void keep(Fact fact);
    void say(Fact fact, const std::vector<std::string>& values);

    Session& session_;
    LookId look_;
    std::map<Fact, Row> rows_;
};

}  // namespace quarterturn
