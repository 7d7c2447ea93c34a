#pragma once

#include <QWidget>
#include <map>

#include "indexer/rules/pair_index.h"

class QCheckBox;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class ChoiceList;
class FactSection;
class ReasonField;
class Session;

// What the wall is narrowed by, each value with its count, and the filters she keeps under names of
// her own.
class FiltersPanel : public QWidget {
    Q_OBJECT
  public:
    explicit FiltersPanel(Session& session, QWidget* parent = nullptr);

    void show_filter(const PairFilter& filter, const FactCounts& counts);

  signals:
    void changed(const quarterturn::PairFilter& filter);

  private:
    void add_kept(QVBoxLayout& column);
    void show_kept();
    void choose_kept();
    void keep_as(const QString& name);
    void forget();

    Session& session_;
    PairFilter filter_;
    std::vector<KeptPairFilter> kept_;
    std::map<Fact, FactSection*> sections_;
    QPushButton* choose_;
    QPushButton* keep_;
    QPushButton* forget_;
    ReasonField* name_;
    QCheckBox* refused_;
};

}  // namespace quarterturn
