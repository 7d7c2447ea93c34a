#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "indexer/record/morning.h"

class QSpinBox;
class QVBoxLayout;

namespace quarterturn {

class TimeWords;

// How many stylists there are, from when on, and their breaks.
class StylistsPart : public QWidget {
    Q_OBJECT
  public:
    explicit StylistsPart(QWidget* parent = nullptr);

    void show_stylists(const std::vector<StylistHours>& stylists);

  signals:
    void changed(const std::vector<quarterturn::StylistHours>& stylists);
    void not_understood(const QString& sentence);

  private:
    struct BreakFields {
        TimeWords* begins;
        TimeWords* ends;
    };
    struct StylistFields {
        TimeWords* arrives;
        std::vector<BreakFields> breaks;
    };
    void build_rows();
    void add_stylist(std::size_t stylist);
    void add_break_row(std::size_t stylist, std::size_t number);
    void fill_rows();
    // `value`: which minute of these stylists' hours it changes.
    using Minute = std::function<int&(std::vector<StylistHours>&)>;
    TimeWords* make_time(const QString& name, const Minute& value);
    void set_count(int count);
    void add_break(std::size_t stylist);
    void remove_break(std::size_t stylist, std::size_t number);
    void keep(std::vector<StylistHours> stylists);
    bool same_rows() const;

    std::vector<StylistHours> stylists_;
    QSpinBox* count_;
    QVBoxLayout* rows_;
    std::vector<StylistFields> fields_;
};

}  // namespace quarterturn
