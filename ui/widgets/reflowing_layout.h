#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace quarterturn {

// A layout whose height depends on the width it is given. Owns its items.
class ReflowingLayout : public QLayout {
    Q_OBJECT
  public:
    ReflowingLayout(int gap, QWidget* parent);
    ~ReflowingLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(items_.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;  // of the one that needs most
    void setGeometry(const QRect& area) override;

  protected:
    // Answers the height.
    virtual int arrange(const QRect& area, bool move) const = 0;
    std::vector<QLayoutItem*> seen() const;
    // `at` is meant from left to right.
    void place(QLayoutItem& item, const QRect& area, const QRect& at) const;
    int gap() const { return gap_; }

  private:
    std::vector<std::unique_ptr<QLayoutItem>> items_;
    int gap_;
};

int height_at(const QLayoutItem& item, int width);

}  // namespace quarterturn
