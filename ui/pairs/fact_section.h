#pragma once

#include <QWidget>
#include <map>
#include <vector>

#include "indexer/record/look_facts.h"
#include "ui/widgets/text_button.h"

class QVBoxLayout;

namespace quarterturn {

// One value to filter by: a box to tick, the value, and how many pairs have it.
class FilterValue : public TextButton {
    Q_OBJECT
  public:
    explicit FilterValue(const QString& value, QWidget* parent = nullptr);

    void show_count(int pairs);
    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    int pairs_ = 0;
};

// The heading of a section, which opens and shuts it.
class SectionHead : public TextButton {
    Q_OBJECT
  public:
    explicit SectionHead(const QString& name, QWidget* parent = nullptr);

    void show_open(bool open);
    void show_chosen(const QString& values);  // beside the name while it is shut
    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QString chosen_;
    bool open_ = false;
};

// A fact with its values, to filter by. Hidden while no pair has a value of it.
class FactSection : public QWidget {
    Q_OBJECT
  public:
    explicit FactSection(Fact fact, QWidget* parent = nullptr);

    using Counts = std::vector<std::pair<std::string, int>>;  // in reading order
    void show_values(const Counts& counts, const std::vector<std::string>& chosen);
    void open(bool open);
    bool is_open() const { return open_; }

  signals:
    void chosen(const std::vector<std::string>& values);

  private:
    void build(const Counts& counts);
    void tell_chosen();

    Fact fact_;
    bool open_ = false;
    SectionHead* head_;
    QWidget* list_;
    QVBoxLayout* rows_;
    std::vector<std::pair<std::string, FilterValue*>> values_;
};

}  // namespace quarterturn
